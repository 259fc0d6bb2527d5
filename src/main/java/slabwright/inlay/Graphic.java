package slabwright.inlay;

import java.util.List;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.shape.Bounds;

/**
 * A graphic's dyed colours in laying order.
 *
 * @param painted bounds of all that the graphic paints, dyed or not; its middle is the anchor
 * @param layers disjoint regions in mm, x right, y down, in the same frame as {@code painted}
 */
public record Graphic(Bounds painted, List<DyeLayer> layers) {
  public Graphic {
    layers = List.copyOf(layers);
  }
}
