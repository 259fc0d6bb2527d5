package slabwright.shape;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;

/** Regions from rings of any kind by their winding numbers, through an arrangement of one layer. */
final class RingFill {
  private RingFill() {}

  static Region fill(Collection<Ring> rings, FillRule rule) {
    return where(rings, rule::inside, Noding.joining(() -> false));
  }

  /** Where the rings run round more often counter-clockwise than clockwise. */
  static Region positive(Collection<Ring> rings) {
    return where(rings, w -> w > 0, Noding.crossing());
  }

  /** The same inside a window, whose sides are noded with the rings. */
  static Region positive(Collection<Ring> rings, BoxArea inside) {
    List<Layer> layers =
        List.of(
            new Layer(0, List.copyOf(rings), FillRule.NONZERO),
            new Layer(1, inside.outline(), FillRule.NONZERO));
    Map<Boolean, Region> filled =
        new Arrangement(layers, Noding.crossing(), () -> false)
            .partition(
                a -> a.winding(0) > 0 && a.contains(1) ? Optional.of(true) : Optional.empty());
    return filled.getOrDefault(true, Region.empty());
  }

  /** Where they run round counter-clockwise twice and more. */
  static Region twice(Collection<Ring> rings) {
    return where(rings, w -> w > 1, Noding.crossing());
  }

  private static Region where(Collection<Ring> rings, IntPredicate inside, Noding noding) {
    Layer only = new Layer(0, List.copyOf(rings), FillRule.NONZERO);
    Map<Boolean, Region> filled =
        new Arrangement(List.of(only), noding, () -> false)
            .partition(
                active -> inside.test(active.winding(0)) ? Optional.of(true) : Optional.empty());
    return filled.getOrDefault(true, Region.empty());
  }
}
