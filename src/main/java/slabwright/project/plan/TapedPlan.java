package slabwright.project.plan;

import java.util.List;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.tape.AdjustedRoom;
import slabwright.tape.TapeRoom;
import slabwright.tape.TapedOutline;
import slabwright.tape.text.TapeText;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** A plan that begins with a room that was taped; its readings stand in it. */
public final class TapedPlan {
  /** The id of its one floor area. */
  private static final String FIRST = "room";

  private TapedPlan() {}

  /**
   * A site of one floor area.
   *
   * @param name of both
   * @param words name its doorways
   */
  public static Site of(AdjustedRoom room, String name, UnitSystem units, Words words) {
    FloorArea area = area(FIRST, name, room, fromZero(room), words);
    return Site.empty(name, units).withAreas(List.of(area));
  }

  /**
   * A floor area of an adjusted room that keeps its readings.
   *
   * @param placing from the room's frame to the site's; it may move and turn, no more
   * @param words name its doorways
   */
  public static FloorArea area(
      String id, String name, AdjustedRoom room, Affine placing, Words words) {
    FloorArea area = TapedOutline.area(id, name, room, placing, words::say);
    return area.withDetails(area.details().withTaped(lines(room.room())));
  }

  /**
   * Lays a room right of and above the site's zero point, whichever way it was walked, so that
   * places on it are typed without a minus.
   */
  public static Affine fromZero(AdjustedRoom room) {
    Bounds b = Bounds.of(room.corners().stream().map(c -> c.at()).toList());
    return Affine.move(-b.minX(), -b.minY());
  }

  /** Readings as the lines that a plan keeps. */
  public static List<String> lines(TapeRoom room) {
    return TapeText.write(room).lines().toList();
  }
}
