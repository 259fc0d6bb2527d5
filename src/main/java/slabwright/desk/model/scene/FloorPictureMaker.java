package slabwright.desk.model.scene;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import slabwright.desk.model.PlanItem;
import slabwright.drawing.Ink;
import slabwright.drawing.Symbol;
import slabwright.figures.AreaInks;
import slabwright.figures.MarkStyles;
import slabwright.shape.Line;
import slabwright.shape.PreparedRegion;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.OutlinePiece;
import slabwright.site.OutlineShape;

/**
 * Works out the picture of a floor area. What did not change is kept from one picture to the next.
 * Used by one thread at a time.
 */
public final class FloorPictureMaker implements Function<FloorArea, FloorPicture> {
  /** How far arcs on the screen may stray, mm. */
  public static final double TOLERANCE = 1;

  /**
   * The picture of one mark.
   *
   * @param region all of the mark
   * @param whole whether all of it lies on the floor
   */
  private record Made(PlanItemShape thing, Region region, boolean whole, List<Ink> inks) {}

  private Map<Mark, Made> known = new HashMap<>();
  private List<OutlinePiece> knownOutline = List.of();

  @Override
  public FloorPicture apply(FloorArea area) {
    OutlineShape shape = OutlineShape.of(area.outline(), TOLERANCE);
    Region floor = shape.region();
    PreparedRegion inside = new PreparedRegion(floor);
    boolean sameFloor = area.outline().equals(knownOutline);
    knownOutline = area.outline();
    Map<Mark, Made> next = new HashMap<>();
    List<PlanItemShape> things = new ArrayList<>();
    List<Ink> ground = new ArrayList<>();
    List<Ink> signs = new ArrayList<>();
    for (Mark m : area.marks()) {
      Made before = known.get(m);
      Made made = before != null && sameFloor ? before : make(m, before, floor, inside);
      next.put(m, made);
      things.add(made.thing());
      (made.thing().region().isEmpty() ? signs : ground).addAll(made.inks());
    }
    known = next;
    List<Ink> walls = new ArrayList<>(AreaInks.outline(area));
    for (Doorway d : area.doorways()) {
      Line gap = shape.doorway(d);
      things.add(PlanItemShape.line(new PlanItem.OfDoorway(d.id()), gap.points()));
      if (d.wayIn() && gap.points().size() > 1) {
        walls.add(arrow(gap, shape.floorOnLeft()));
      }
    }
    walls.addAll(signs);
    return new FloorPicture(area, shape, floor, things, ground, walls);
  }

  /** What was made before is kept, to the instance, where another floor changes nothing. */
  private static Made make(Mark m, Made before, Region floor, PreparedRegion inside) {
    Region region = before == null ? m.form().region(TOLERANCE) : before.region();
    boolean whole = inside.covers(region);
    if (before != null && whole && before.whole()) {
      return before;
    }
    List<Ink> inks = AreaInks.mark(m, whole ? around(region) : floor);
    if (before != null && inks.equals(before.inks())) {
      return before;
    }
    return new Made(before == null ? thing(m, region) : before.thing(), region, whole, inks);
  }

  private static PlanItemShape thing(Mark m, Region region) {
    PlanItem pick = new PlanItem.OfMark(m.id());
    return region.isEmpty()
        ? PlanItemShape.line(pick, m.form().spots().stream().map(s -> s.vec()).toList())
        : PlanItemShape.area(pick, region);
  }

  /** Stands in for a floor that clips nothing of the region, at a smaller price. */
  private static Region around(Region region) {
    return Region.rectangle(region.bounds().grown(2 * TOLERANCE));
  }

  /** How far outside a way in its arrow stands, mm on the site. */
  public static final double ARROW_OUT = 1100;

  /** Its size, mm of paper. */
  public static final double ARROW = 6;

  /** An arrow outside the doorway that points onto the floor. */
  private static Ink arrow(Line gap, boolean floorOnLeft) {
    Vec a = gap.points().get(0);
    Vec b = gap.points().get(gap.points().size() - 1);
    Vec in = b.minus(a).unit().left().times(floorOnLeft ? 1 : -1);
    double turn = Math.toDegrees(in.angle()) - 90;
    Vec at = a.towards(b, 0.5).minus(in.times(ARROW_OUT));
    return Symbol.of(Symbol.Kind.WAY_IN, at, ARROW, MarkStyles.WAY_IN.colour()).turned(turn);
  }
}
