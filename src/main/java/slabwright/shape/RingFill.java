package slabwright.shape;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Regions from rings of any kind by a fill rule, through an arrangement of one layer. */
final class RingFill {
  private RingFill() {}

  static Region fill(Collection<Ring> rings, FillRule rule) {
    Layer only = new Layer(0, List.copyOf(rings), rule);
    Map<Boolean, Region> filled =
        Arrangement.of(List.of(only))
            .partition(active -> active.isEmpty() ? Optional.empty() : Optional.of(true));
    return filled.getOrDefault(true, Region.empty());
  }
}
