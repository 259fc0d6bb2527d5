package slabwright.inlay.artwork;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.FillRule;
import slabwright.shape.Ring;

/**
 * The outlines drawn in an SVG file in paint order, at the size the file states (96 px to the
 * inch): fills with their colour, and closed lines as lines, whatever their width.
 */
public record Outlines(String name, List<Outline> outlines) implements OutlinesResult {
  private static final double MM_PER_PX = 25.4 / 96;
  private static final double TOLERANCE_MM = 0.02;

  public Outlines {
    outlines = List.copyOf(outlines);
  }

  /**
   * Reads SVG text.
   *
   * @param name what to call it in sentences
   * @throws IOException when the stream breaks
   */
  public static OutlinesResult read(InputStream svg, String name) throws IOException {
    byte[] bytes = svg.readNBytes(Artwork.MOST_BYTES + 1);
    try {
      Artwork.checkSize(bytes);
      synchronized (Artwork.ONE_AT_A_TIME) {
        return read(bytes, name);
      }
    } catch (Refused e) {
      return e.refusal(name);
    }
  }

  private static Outlines read(byte[] bytes, String name) {
    Notes notes = new Notes();
    SvgElement root = SvgReader.read(bytes);
    Modernise.run(root, notes);
    UseBudget.check(root);
    Page page = Page.settle(root);
    double scale = page.declaredPerDrawn() * MM_PER_PX;
    AffineTransform toMm = AffineTransform.getScaleInstance(scale, scale);
    List<PaintedShape> shapes =
        SceneWalk.shapesAndLines(Scene.build(root, page, new FontBook(true), notes), notes);
    List<Outline> outlines = new ArrayList<>();
    for (PaintedShape s : shapes) {
      outline(s, toMm).ifPresent(outlines::add);
    }
    return new Outlines(name, outlines);
  }

  private static Optional<Outline> outline(PaintedShape s, AffineTransform toMm) {
    Path2D path = s.line() ? closedParts(s.outline()) : s.outline();
    List<Ring> rings = Flatten.rings(path, toMm, TOLERANCE_MM);
    FillRule rule =
        path.getWindingRule() == PathIterator.WIND_EVEN_ODD ? FillRule.EVEN_ODD : FillRule.NONZERO;
    return rings.isEmpty()
        ? Optional.empty()
        : Optional.of(new Outline(rings, rule, Optional.of(s.hex()).filter(h -> !s.line())));
  }

  /** A line that does not close encloses nothing. */
  private static Path2D closedParts(Path2D path) {
    Path2D.Double kept = new Path2D.Double(path.getWindingRule());
    Path2D.Double part = new Path2D.Double();
    double[] c = new double[6];
    for (PathIterator it = path.getPathIterator(null); !it.isDone(); it.next()) {
      int kind = it.currentSegment(c);
      switch (kind) {
        case PathIterator.SEG_MOVETO -> {
          keepIfClosed(part, kept);
          part = new Path2D.Double();
          part.moveTo(c[0], c[1]);
        }
        case PathIterator.SEG_LINETO -> part.lineTo(c[0], c[1]);
        case PathIterator.SEG_QUADTO -> part.quadTo(c[0], c[1], c[2], c[3]);
        case PathIterator.SEG_CUBICTO -> part.curveTo(c[0], c[1], c[2], c[3], c[4], c[5]);
        default -> part.closePath();
      }
    }
    keepIfClosed(part, kept);
    return kept;
  }

  private static void keepIfClosed(Path2D part, Path2D kept) {
    if (part.getCurrentPoint() == null) {
      return;
    }
    double[] first = new double[6];
    part.getPathIterator(null).currentSegment(first);
    // after closePath the current point is the first one again
    double gap = part.getCurrentPoint().distance(first[0], first[1]);
    double size = Math.hypot(part.getBounds2D().getWidth(), part.getBounds2D().getHeight());
    if (gap <= size * 1e-4) {
      kept.append(part, false);
    }
  }
}
