package slabwright.shape;

import java.util.List;

/**
 * One painted or drawn thing in an {@link Arrangement}: rings whose winding numbers add, and the
 * rule that says where they fill. A higher id lies on top of a lower one.
 */
public record Layer(int id, List<Ring> rings, FillRule rule) {
  public Layer {
    rings = List.copyOf(rings);
  }

  /** A layer that fills wherever the region does. */
  public static Layer of(int id, Region region) {
    return new Layer(id, region.rings(), FillRule.NONZERO);
  }
}
