package slabwright.inlay.stencil;

import java.util.Comparator;
import java.util.List;
import slabwright.shape.Region;

/**
 * One colour that is dyed.
 *
 * @param colour the colour's name as shown
 * @param lightness CIE L*: 0 is black, 100 the white of the screen
 * @param artwork where the colour is seen in the graphic; colours are disjoint
 */
public record DyeLayer(String colour, double lightness, Region artwork) {

  /** The laying order that dye allows: lightest first, since each dye shows only over a lighter. */
  public static List<DyeLayer> lightestFirst(List<DyeLayer> layers) {
    return layers.stream()
        .sorted(Comparator.comparingDouble(DyeLayer::lightness).reversed())
        .toList();
  }
}
