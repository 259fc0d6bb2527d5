package slabwright.desk.model.scene;

import java.util.List;
import slabwright.desk.model.PlanItem;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;

/**
 * Where something that can be picked lies on the floor.
 *
 * @param region the area it covers; empty for lines and places
 * @param path its line, when it is one; a place has one point
 * @param middle where there is most room for its name inside; of an area alone
 */
public record PlanItemShape(PlanItem pick, Region region, List<Vec> path, Vec middle) {
  public PlanItemShape {
    path = List.copyOf(path);
  }

  static PlanItemShape area(PlanItem pick, Region region) {
    return new PlanItemShape(pick, region, List.of(), region.labelPoint());
  }

  static PlanItemShape line(PlanItem pick, List<Vec> path) {
    return new PlanItemShape(pick, Region.empty(), path, Vec.ZERO);
  }

  /** Whether a touch within {@code reach} mm of the point is meant for it. */
  public boolean isAt(Vec p, double reach) {
    if (!region.isEmpty()) {
      return region.bounds().grown(reach).contains(p) && region.contains(p);
    }
    return path.size() == 1
        ? path.get(0).distanceTo(p) <= 1.6 * reach
        : SegmentGeometry.distance(new Line(path), p) <= reach;
  }

  /** Bounds of all of it, mm. */
  public Bounds bounds() {
    return region.isEmpty() ? Bounds.of(path) : region.bounds();
  }
}
