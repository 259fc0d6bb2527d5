package slabwright.inlay.artwork;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.artwork.batik.FineOutline;

/**
 * A clip kept as the outlines it is made of, so that it can be intersected exactly later. To the
 * SVG library it looks like one path. What shows is the union of the parts, each inside its own
 * inner clip, all inside the outer clip.
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

  List<Part> parts() {
    return parts;
  }

  Optional<ClipOutlines> inside() {
    return inside;
  }

  /** A plain shape as a clip. */
  public static ClipOutlines of(Shape shape) {
    return shape instanceof Carrier c
        ? c.outlines
        : new ClipOutlines(
            List.of(new Part(FineOutline.of(shape), Optional.empty())), Optional.empty());
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

  /** A path that carries these outlines through the SVG library. */
  public Path2D carrier() {
    return new Carrier(this);
  }

  private static final class Carrier extends Path2D.Double {
    private static final long serialVersionUID = 1;

    private final transient ClipOutlines outlines;

    Carrier(ClipOutlines outlines) {
      this.outlines = outlines;
      for (Part part : outlines.parts) {
        append(part.outline, false);
      }
    }
  }
}
