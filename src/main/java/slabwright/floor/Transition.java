package slabwright.floor;

import java.util.List;
import java.util.Optional;
import slabwright.shape.Line;
import slabwright.site.Mark;

/**
 * Where two zones of the floor meet: the earlier mark (or the old slab) lies on the left of the
 * lines, the later one on the right.
 */
public record Transition(Optional<Mark> below, Mark above, List<Line> lines) {
  public Transition {
    lines = List.copyOf(lines);
  }

  /** Length in mm. */
  public double length() {
    return lines.stream().mapToDouble(Line::length).sum();
  }
}
