package slabwright.drawing;

import java.util.List;
import slabwright.shape.Bounds;

/**
 * An ink that painters draw as it is: lines, curves, an even-odd fill, one run of words or a
 * picture of pixels.
 */
public sealed interface PrimitiveInk extends Ink permits Stroke, CurveStroke, Fill, Text, Raster {
  @Override
  PrimitiveInk placed(View view);

  /** Hands this ink to the painter's method for its kind. */
  void paintOn(Painter painter);

  @Override
  default List<PrimitiveInk> parts(Bounds window) {
    return List.of(this);
  }
}
