package slabwright.inlay.artwork;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.Optional;

/**
 * A clip kept as the outlines it is made of, so that it can be intersected exactly later. What
 * shows is the union of the parts, each inside its own inner clip, all inside the outer clip.
 */
public final class ClipOutlines {
  /** One outline with its fill rule, and what clips it in turn. */
  public record Part(Path2D outline, Optional<ClipOutlines> inside) {}

  private final List<Part> parts;
  private final Optional<ClipOutlines> inside;

  public ClipOutlines(List<Part> parts, Optional<ClipOutlines> inside) {
    this.parts = List.copyOf(parts);
    this.inside = inside;
  }

  public List<Part> parts() {
    return parts;
  }

  Optional<ClipOutlines> inside() {
    return inside;
  }

  public ClipOutlines transformed(AffineTransform at) {
    List<Part> moved =
        parts.stream()
            .map(
                p ->
                    new Part(
                        new Path2D.Double(p.outline, at), p.inside.map(c -> c.transformed(at))))
            .toList();
    return new ClipOutlines(moved, inside.map(c -> c.transformed(at)));
  }
}
