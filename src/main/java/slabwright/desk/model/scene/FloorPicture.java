package slabwright.desk.model.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.PlanItem;
import slabwright.drawing.Ink;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.OutlineShape;

/**
 * A floor area worked out for the screen: its shapes, where things lie, and its inks.
 *
 * @param things what can be picked, the topmost last
 * @param ground inks of all marks, site frame
 * @param walls inks of the outline and its doorways, laid over everything else
 */
public record FloorPicture(
    FloorArea area,
    OutlineShape shape,
    Region floor,
    List<PlanItemShape> things,
    List<Ink> ground,
    List<Ink> walls) {
  public FloorPicture {
    things = List.copyOf(things);
    ground = List.copyOf(ground);
    walls = List.copyOf(walls);
  }

  /** Where there is most room on the floor; dear, so not asked for on the screen's thread. */
  public Vec roomiest() {
    return floor.labelPoint();
  }

  public Bounds bounds() {
    return floor.bounds();
  }

  public Optional<PlanItemShape> thing(PlanItem pick) {
    return things.stream().filter(t -> t.pick().equals(pick)).findFirst();
  }

  /** What a touch is meant for: small things before what lies under them. */
  public Optional<PlanItem> at(Vec p, double reach) {
    return corner(p, reach)
        .or(() -> topmost(p, reach, true))
        .or(() -> topmost(p, reach, false))
        .or(() -> wall(p, reach));
  }

  private Optional<PlanItem> corner(Vec p, double reach) {
    for (int i = 0; i < area.outline().size(); i++) {
      if (area.outline().get(i).from().vec().distanceTo(p) <= reach) {
        return Optional.of(new PlanItem.OfCorner(i));
      }
    }
    return Optional.empty();
  }

  private Optional<PlanItem> topmost(Vec p, double reach, boolean lines) {
    for (int i = things.size() - 1; i >= 0; i--) {
      PlanItemShape t = things.get(i);
      if (t.region().isEmpty() == lines && t.isAt(p, reach)) {
        return Optional.of(t.pick());
      }
    }
    return Optional.empty();
  }

  private Optional<PlanItem> wall(Vec p, double reach) {
    record Near(int wall, double distance) {}
    List<Near> near = new ArrayList<>();
    for (int i = 0; i < shape.pieces().size(); i++) {
      near.add(new Near(i, SegmentGeometry.distance(shape.pieces().get(i), p)));
    }
    return near.stream()
        .filter(n -> n.distance() <= reach)
        .min(Comparator.comparingDouble(Near::distance))
        .map(n -> new PlanItem.OfWall(n.wall()));
  }

  /** Everything wholly inside a box. */
  public List<PlanItem> within(Bounds box) {
    return things.stream()
        .filter(t -> inside(box, t.bounds()))
        .map(PlanItemShape::pick)
        .filter(PlanItem.OfMark.class::isInstance)
        .toList();
  }

  private static boolean inside(Bounds box, Bounds b) {
    return box.contains(new Vec(b.minX(), b.minY())) && box.contains(new Vec(b.maxX(), b.maxY()));
  }

  /** Straight pieces that a snap can hold on to. */
  public List<Line> edges() {
    List<Line> all = new ArrayList<>(shape.pieces());
    for (PlanItemShape t : things) {
      t.region()
          .rings()
          .forEach(
              r -> {
                List<Vec> closed = new ArrayList<>(r.points());
                closed.add(closed.get(0));
                all.add(new Line(closed));
              });
      if (t.path().size() > 1) {
        all.add(new Line(t.path()));
      }
    }
    return all;
  }

  /** Corners that a snap can hold on to. */
  public List<Vec> corners() {
    List<Vec> all = new ArrayList<>();
    area.outline().forEach(p -> all.add(p.from().vec()));
    area.doorways()
        .forEach(
            d -> {
              Line jambs = shape.doorway(d);
              if (!jambs.points().isEmpty()) {
                all.add(jambs.points().get(0));
                all.add(jambs.points().get(jambs.points().size() - 1));
              }
            });
    area.marks().forEach(m -> m.form().spots().forEach(s -> all.add(s.vec())));
    for (PlanItemShape t : things) {
      t.region().rings().stream()
          .filter(r -> r.points().size() <= 12)
          .forEach(r -> all.addAll(r.points()));
    }
    return all;
  }
}
