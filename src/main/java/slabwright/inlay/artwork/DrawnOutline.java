package slabwright.inlay.artwork;

import java.util.List;
import java.util.Optional;
import slabwright.shape.FillRule;
import slabwright.shape.Ring;

/**
 * One closed thing drawn in a file, at the file's true size.
 *
 * @param rings mm from the page's top-left, x right, y down
 * @param fill {@code #rrggbb} when it is filled; empty for a bare line
 */
public record DrawnOutline(List<Ring> rings, FillRule rule, Optional<String> fill) {
  public DrawnOutline {
    rings = List.copyOf(rings);
  }
}
