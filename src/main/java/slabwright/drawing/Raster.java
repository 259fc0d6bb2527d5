package slabwright.drawing;

import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/**
 * A picture of pixels, upright and stretched over a level box.
 *
 * @param at the box in the drawing's frame
 */
public record Raster(Bounds at, EncodedPicture picture) implements PrimitiveInk {
  /**
   * @throws IllegalArgumentException for a view that turns, for pictures stay upright
   */
  @Override
  public Raster placed(View view) {
    if (view.turnDegrees() != 0) {
      throw new IllegalArgumentException("a picture of pixels can't be turned");
    }
    Vec one = view.onPaper(new Vec(at.minX(), at.minY()));
    Vec other = view.onPaper(new Vec(at.maxX(), at.maxY()));
    return new Raster(Bounds.EMPTY.including(one).including(other), picture);
  }

  @Override
  public void paintOn(Painter painter) {
    painter.raster(this);
  }

  @Override
  public Bounds reach() {
    return at;
  }
}
