package slabwright.picture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import slabwright.floor.FloorTakeoff;
import slabwright.project.AreaCache;
import slabwright.site.Exposure;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.store.PlanFile;
import slabwright.work.AreaResult;
import slabwright.work.book.BookSamples;
import slabwright.work.book.ShopBook;

/** Floors to take pictures of. */
final class PictureSamples {
  static final String PAPER = "#efece6";

  private PictureSamples() {}

  static ShopBook book() {
    return BookSamples.book();
  }

  /** A square room of 4 m with marks and coats. */
  static FloorArea room(List<Mark> marks, Finish.Coat... coats) {
    List<OutlinePiece> outline =
        List.of(
            OutlinePiece.wall(Spot.mm(0, 0)),
            OutlinePiece.wall(Spot.mm(4000, 0)),
            OutlinePiece.wall(Spot.mm(4000, 4000)),
            OutlinePiece.wall(Spot.mm(0, 4000)));
    return FloorArea.of("room", "Room", outline)
        .withMarks(marks)
        .withFinish(new Finish(Optional.of(Exposure.CREAM), List.of(coats)));
  }

  static Finish.Coat dye(int coats) {
    return new Finish.Coat("base-dye", coats, Finish.Target.WHOLE_FLOOR);
  }

  static FloorScene scene(FloorArea area) {
    return FloorScene.of(FloorTakeoff.of(area), List.of(), book());
  }

  /** The hall of the invented sample. */
  static AreaResult tramHall() {
    Path plan = Path.of("sample-plans", "tram-hall.site.json");
    try {
      Site site = PlanFile.read(plan).orThrow();
      Site hall = site.withAreas(List.of(site.areas().get(0)));
      return new AreaCache().of(hall, plan.getParent(), () -> false).get(0);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static FloorScene tramHallScene() {
    AreaResult hall = tramHall();
    return FloorScene.of(hall.takeoff(), hall.inlays(), book());
  }
}
