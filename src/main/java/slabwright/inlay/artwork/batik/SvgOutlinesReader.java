package slabwright.inlay.artwork.batik;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.artwork.ArtworkPage;
import slabwright.inlay.artwork.DrawnOutline;
import slabwright.inlay.artwork.DrawnOutlines;
import slabwright.inlay.artwork.OutlinesResult;
import slabwright.inlay.artwork.PaintedShape;
import slabwright.inlay.artwork.PathFlattener;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.inlay.artwork.css.Svg11Rewriter;
import slabwright.inlay.artwork.css.SvgElement;
import slabwright.inlay.artwork.css.SvgPageReader;
import slabwright.inlay.artwork.css.SvgReader;
import slabwright.inlay.artwork.css.UseExpansionValidator;
import slabwright.shape.FillRule;
import slabwright.shape.Line;
import slabwright.shape.Ring;

/** Reads the outlines that an SVG file draws, at the size the file states. */
public final class SvgOutlinesReader {
  private static final double MM_PER_PX = 25.4 / 96;
  private static final double TOLERANCE_MM = 0.02;

  private SvgOutlinesReader() {}

  /**
   * Reads SVG text.
   *
   * @param name what to call it in sentences
   * @throws IOException when the stream breaks
   */
  public static OutlinesResult read(InputStream svg, String name) throws IOException {
    byte[] bytes = svg.readNBytes(SvgArtworkReader.MOST_BYTES + 1);
    try {
      SvgArtworkReader.checkSize(bytes);
      synchronized (SvgArtworkReader.ONE_AT_A_TIME) {
        return read(bytes, name);
      }
    } catch (RefusedArtworkException e) {
      return e.refusal(name);
    }
  }

  private static DrawnOutlines read(byte[] bytes, String name) {
    WarningCollector notes = new WarningCollector();
    SvgElement root = SvgReader.read(bytes);
    FontResolver book = new FontResolver(Svg11Rewriter.rewrite(root, notes), true);
    UseExpansionValidator.check(root);
    ArtworkPage page = SvgPageReader.settle(root);
    double scale = page.declaredPerDrawn() * MM_PER_PX;
    AffineTransform toMm = AffineTransform.getScaleInstance(scale, scale);
    List<PaintedShape> shapes =
        SceneVisitor.shapesAndLines(SceneBuilder.build(root, page, book, notes), notes);
    List<DrawnOutline> outlines = new ArrayList<>();
    List<Line> lines = new ArrayList<>();
    for (PaintedShape s : shapes) {
      if (s.line()) {
        Path2D open = parts(s.outline(), false);
        PathFlattener.chains(open, toMm, TOLERANCE_MM).forEach(chain -> lines.add(new Line(chain)));
      }
      outline(s, toMm).ifPresent(outlines::add);
    }
    return new DrawnOutlines(name, outlines, lines);
  }

  private static Optional<DrawnOutline> outline(PaintedShape s, AffineTransform toMm) {
    Path2D path = s.line() ? parts(s.outline(), true) : s.outline();
    List<Ring> rings = PathFlattener.rings(path, toMm, TOLERANCE_MM);
    FillRule rule =
        path.getWindingRule() == PathIterator.WIND_EVEN_ODD ? FillRule.EVEN_ODD : FillRule.NONZERO;
    return rings.isEmpty()
        ? Optional.empty()
        : Optional.of(new DrawnOutline(rings, rule, Optional.of(s.hex()).filter(h -> !s.line())));
  }

  /** The subpaths that close, or those that don't. */
  private static Path2D parts(Path2D path, boolean closed) {
    Path2D.Double kept = new Path2D.Double(path.getWindingRule());
    Path2D.Double part = new Path2D.Double();
    double[] c = new double[6];
    for (PathIterator it = path.getPathIterator(null); !it.isDone(); it.next()) {
      int kind = it.currentSegment(c);
      switch (kind) {
        case PathIterator.SEG_MOVETO -> {
          keep(part, closed, kept);
          part = new Path2D.Double();
          part.moveTo(c[0], c[1]);
        }
        case PathIterator.SEG_LINETO -> part.lineTo(c[0], c[1]);
        case PathIterator.SEG_QUADTO -> part.quadTo(c[0], c[1], c[2], c[3]);
        case PathIterator.SEG_CUBICTO -> part.curveTo(c[0], c[1], c[2], c[3], c[4], c[5]);
        default -> part.closePath();
      }
    }
    keep(part, closed, kept);
    return kept;
  }

  private static void keep(Path2D part, boolean closed, Path2D kept) {
    if (part.getCurrentPoint() == null) {
      return;
    }
    double[] first = new double[6];
    part.getPathIterator(null).currentSegment(first);
    // after closePath the current point is the first one again
    double gap = part.getCurrentPoint().distance(first[0], first[1]);
    double size = Math.hypot(part.getBounds2D().getWidth(), part.getBounds2D().getHeight());
    if ((gap <= size * 1e-4) == closed) {
      kept.append(part, false);
    }
  }
}
