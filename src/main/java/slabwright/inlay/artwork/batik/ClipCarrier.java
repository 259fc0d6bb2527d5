package slabwright.inlay.artwork.batik;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.artwork.ClipOutlines;

/** One path to the SVG library, through which a clip's outlines are carried. */
final class ClipCarrier extends Path2D.Double {
  private static final long serialVersionUID = 1;

  private final transient ClipOutlines outlines;

  ClipCarrier(ClipOutlines outlines) {
    this.outlines = outlines;
    for (ClipOutlines.Part part : outlines.parts()) {
      append(part.outline(), false);
    }
  }

  /** The outlines that a shape carries; a plain shape is a clip of its own outline. */
  static ClipOutlines outlines(Shape shape) {
    return shape instanceof ClipCarrier c
        ? c.outlines
        : new ClipOutlines(
            List.of(new ClipOutlines.Part(FineOutline.of(shape), Optional.empty())),
            Optional.empty());
  }
}
