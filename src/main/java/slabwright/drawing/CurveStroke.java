package slabwright.drawing;

import java.util.List;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.curve.CurvedRing;

/** Closed outlines of lines and curves drawn with one pen. */
public record CurveStroke(List<CurvedRing> rings, Pen pen) implements PrimitiveInk {
  private static final double FLAT_MM = 0.02;

  public CurveStroke {
    rings = List.copyOf(rings);
  }

  /** The same as chains of points, for painters that draw no curves. */
  public Stroke flattened() {
    return Stroke.rings(pen, rings.stream().map(r -> r.flattened(FLAT_MM)).toList());
  }

  @Override
  public CurveStroke placed(View view) {
    Affine map = view.map();
    return new CurveStroke(rings.stream().map(r -> r.map(map)).toList(), pen);
  }

  @Override
  public void paintOn(Painter painter) {
    painter.curves(this);
  }

  @Override
  public Bounds reach() {
    return flattened().reach();
  }
}
