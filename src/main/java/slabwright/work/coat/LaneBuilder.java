package slabwright.work.coat;

import java.time.Duration;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** Turns a cell back into the site's frame and gives it a middle line to walk. */
final class LaneBuilder {
  private LaneBuilder() {}

  static Lane lane(
      LaneParameters job,
      LaneCells cells,
      LaneOrder.Step step,
      int number,
      Duration from,
      Duration to) {
    Region upright = cells.cells().get(step.cell()).region();
    Affine back = cells.back();
    Region region = back.b() == 0 && back.a() == 1 ? upright : upright.map(back);
    return new Lane(
        number, region, walk(upright, back, job.grid().wayOut()), from, to, step.narrow());
  }

  private static Line walk(Region upright, Affine back, Vec wayOut) {
    Bounds b = upright.bounds();
    Vec low = back.apply(new Vec(b.middle().x(), b.minY()));
    Vec high = back.apply(new Vec(b.middle().x(), b.maxY()));
    boolean lowIsNearer = low.distanceTo(wayOut) < high.distanceTo(wayOut);
    return lowIsNearer ? Line.of(high, low) : Line.of(low, high);
  }
}
