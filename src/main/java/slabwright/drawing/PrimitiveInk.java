package slabwright.drawing;

import java.util.List;
import slabwright.shape.Bounds;

/** An ink that painters draw as it is: lines, curves, an even-odd fill or one run of words. */
public sealed interface PrimitiveInk extends Ink permits Stroke, CurveStroke, Fill, Text {
  @Override
  PrimitiveInk placed(View view);

  /** Hands this ink to the painter's method for its kind. */
  void paintOn(Painter painter);

  @Override
  default List<PrimitiveInk> parts(Bounds window) {
    return List.of(this);
  }
}
