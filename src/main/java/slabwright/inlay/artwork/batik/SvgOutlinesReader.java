package slabwright.inlay.artwork.batik;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.batik.gvt.GraphicsNode;
import slabwright.inlay.artwork.ArtworkPage;
import slabwright.inlay.artwork.DrawnOutline;
import slabwright.inlay.artwork.DrawnOutlines;
import slabwright.inlay.artwork.OutlinesResult;
import slabwright.inlay.artwork.PaintedAreas;
import slabwright.inlay.artwork.PaintedPage;
import slabwright.inlay.artwork.PaintedShape;
import slabwright.inlay.artwork.PathFlattener;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.inlay.artwork.css.EmbeddedPictures;
import slabwright.inlay.artwork.css.Svg11Rewriter;
import slabwright.inlay.artwork.css.SvgElement;
import slabwright.inlay.artwork.css.SvgLayers;
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

  /** On a small page a drawing may stand for a large blank, so its curves are followed closer. */
  private static final double PAGE_SHARE = 5e-6;

  private final List<DrawnOutline> outlines = new ArrayList<>();
  private final List<DrawnOutlines.DrawnLine> lines = new ArrayList<>();
  private final List<DrawnOutlines.DrawnWords> words = new ArrayList<>();
  private AffineTransform toMm = new AffineTransform();
  private double tolerance = TOLERANCE_MM;
  private double pictured;
  private PaintedPage painted = PaintedPage.FILLS;

  private SvgOutlinesReader() {}

  /**
   * Reads SVG text.
   *
   * @param name what to call it in sentences
   * @param layers ids of the groups that are told apart
   * @throws IOException when the stream breaks
   */
  public static OutlinesResult read(InputStream svg, String name, List<String> layers)
      throws IOException {
    byte[] bytes = svg.readNBytes(SvgArtworkReader.MOST_BYTES + 1);
    try {
      SvgArtworkReader.checkSize(bytes);
      synchronized (SvgArtworkReader.ONE_AT_A_TIME) {
        return read(bytes, name, layers);
      }
    } catch (RefusedArtworkException e) {
      return e.refusal(name);
    }
  }

  private static DrawnOutlines read(byte[] bytes, String name, List<String> layers) {
    SvgOutlinesReader reader = new SvgOutlinesReader();
    SvgElement all = SvgReader.read(bytes);
    String title = SvgLayers.title(all);
    List<String> present = SvgLayers.of(all, layers);
    SvgElement rest = SvgReader.read(bytes);
    if (SvgLayers.without(rest, present) || present.isEmpty()) {
      reader.read(rest, "");
    }
    for (String layer : present) {
      SvgElement root = SvgReader.read(bytes);
      SvgLayers.only(root, layer);
      reader.read(root, layer);
    }
    return new DrawnOutlines(
        name,
        title,
        reader.outlines,
        reader.lines,
        reader.words,
        reader.painted,
        reader.tolerance + reader.pictured);
  }

  private void read(SvgElement root, String layer) {
    WarningCollector notes = new WarningCollector();
    UseExpansionValidator.checkRules(root);
    FontResolver book = new FontResolver(Svg11Rewriter.rewrite(root, notes), true);
    UseExpansionValidator.check(root);
    ArtworkPage page = SvgPageReader.settle(root);
    double scale = page.declaredPerDrawn() * MM_PER_PX;
    pictured = Math.max(pictured, EmbeddedPictures.trace(root, notes) * scale);
    toMm = AffineTransform.getScaleInstance(scale, scale);
    tolerance = Math.min(TOLERANCE_MM, PAGE_SHARE * scale * Math.max(page.width(), page.height()));
    GraphicsNode all = SceneBuilder.build(root, page, book, notes);
    SceneVisitor.Lines scene = SceneVisitor.shapesAndLines(all, notes);
    for (int i = 0; i < scene.shapes().size(); i++) {
      add(scene.shapes().get(i), isLetter(scene, i) ? DrawnOutlines.WORDS : layer);
    }
    for (SceneVisitor.Lines.Lettering text : scene.texts()) {
      words.add(new DrawnOutlines.DrawnWords(text.text(), text.at().times(scale)));
    }
    if (layer.isEmpty() && isMoreThanFills(scene.shapes())) {
      List<PaintedShape> seen = SceneVisitor.shapes(all, new AffineTransform(), notes);
      painted = PaintedAreas.of(seen, toMm, tolerance);
    }
  }

  /** Whether several colors are painted, and not by whole fills alone. */
  private static boolean isMoreThanFills(List<PaintedShape> shapes) {
    boolean fills =
        shapes.stream().noneMatch(s -> s.line() || !s.clips().isEmpty() || !s.masks().isEmpty());
    return !fills && shapes.stream().map(PaintedShape::hex).distinct().count() > 1;
  }

  private static boolean isLetter(SceneVisitor.Lines scene, int i) {
    return scene.texts().stream().anyMatch(t -> t.from() <= i && i < t.to());
  }

  private void add(PaintedShape s, String layer) {
    if (s.line()) {
      Path2D open = parts(s.outline(), false);
      PathFlattener.chains(open, toMm, tolerance)
          .forEach(chain -> lines.add(new DrawnOutlines.DrawnLine(new Line(chain), layer)));
    }
    Path2D path = s.line() ? parts(s.outline(), true) : s.outline();
    List<Ring> rings = PathFlattener.rings(path, toMm, tolerance);
    FillRule rule =
        path.getWindingRule() == PathIterator.WIND_EVEN_ODD ? FillRule.EVEN_ODD : FillRule.NONZERO;
    if (!rings.isEmpty()) {
      Optional<String> fill = Optional.of(s.hex()).filter(h -> !s.line());
      outlines.add(new DrawnOutline(rings, rule, fill, layer));
    }
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
