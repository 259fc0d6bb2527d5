package slabwright.inlay;

import java.util.List;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.StencilParameters;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;

/** Small graphics that tests share. Millimetres, x right, y down. */
public final class Graphics {
  private Graphics() {}

  /** A rectangle from one corner to the other. */
  public static Region box(double minX, double minY, double maxX, double maxY) {
    return Region.rectangle(new Bounds(minX, minY, maxX, maxY));
  }

  /** A square ring: 400 outside, 200 inside, so one loose piece of 40 000 mm². */
  public static Region squareRing() {
    return box(0, 0, 400, 400).minus(box(100, 100, 300, 300));
  }

  /** The letter F, which no mirror and no turn maps on itself. */
  public static Region letterF(double size) {
    double s = size / 10;
    Ring f =
        Ring.of(
            0, 0, 6 * s, 0, 6 * s, 2 * s, 2 * s, 2 * s, 2 * s, 4 * s, 5 * s, 4 * s, 5 * s, 6 * s,
            2 * s, 6 * s, 2 * s, 10 * s, 0, 10 * s);
    return Region.of(List.of(f), FillRule.NONZERO);
  }

  /** One black stencil by the usual rules. */
  public static StencilSet one(Region artwork) {
    return StencilSet.of(List.of(new DyeLayer("black", 0, artwork)), StencilParameters.usual());
  }
}
