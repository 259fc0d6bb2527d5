package slabwright.shape;

import java.util.List;
import java.util.Optional;

/**
 * A straight piece of boundary between differently labelled faces, in mm. Left and right are seen
 * from {@code from} towards {@code to} with y up; no label is what no label was given to.
 */
public record Border<L>(
    Optional<L> left, Optional<L> right, Vec from, Vec to, List<BorderSource> sources) {
  public Border {
    sources = List.copyOf(sources);
  }

  public double length() {
    return from.distanceTo(to);
  }

  /** The same piece seen the other way. */
  public Border<L> reversed() {
    List<BorderSource> turned =
        sources.stream()
            .map(s -> new BorderSource(s.layer(), s.ring(), s.segment(), !s.forward()))
            .toList();
    return new Border<>(right, left, to, from, turned);
  }
}
