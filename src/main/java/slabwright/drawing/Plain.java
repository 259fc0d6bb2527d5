package slabwright.drawing;

import java.util.List;
import slabwright.shape.Bounds;

/** An ink that painters draw as it is: lines, an even-odd fill or one run of words. */
public sealed interface Plain extends Ink permits Stroke, Fill, Text {
  @Override
  Plain placed(View view);

  /** Hands this ink to the painter's method for its kind. */
  void paintOn(Painter painter);

  @Override
  default List<Plain> parts(Bounds window) {
    return List.of(this);
  }
}
