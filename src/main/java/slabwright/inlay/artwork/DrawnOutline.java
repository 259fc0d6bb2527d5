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
 * @param layer id of the named group it lies in, {@link DrawnOutlines#WORDS} for a letter of text
 *     kept as text, else empty
 */
public record DrawnOutline(List<Ring> rings, FillRule rule, Optional<String> fill, String layer) {
  public DrawnOutline {
    rings = List.copyOf(rings);
  }
}
