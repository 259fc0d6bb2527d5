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
import slabwright.inlay.artwork.ClippedOutlines;
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
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

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
    ClippedOutlines clips = new ClippedOutlines(toMm, tolerance);
    for (int i = 0; i < scene.shapes().size(); i++) {
      add(scene.shapes().get(i), clips, isLetter(scene, i) ? DrawnOutlines.WORDS : layer);
    }
    for (SceneVisitor.Lines.Lettering text : scene.texts()) {
      words.add(new DrawnOutlines.DrawnWords(text.text(), text.at().times(scale)));
    }
    if (layer.isEmpty() && isMoreThanFills(scene.shapes(), page)) {
      List<PaintedShape> seen = SceneVisitor.shapes(all, new AffineTransform(), notes);
      painted = PaintedAreas.of(seen, toMm, tolerance);
    }
    if (clips.unread().isPresent()) {
      painted = new PaintedPage(List.of(), clips.unread());
    }
  }

  /** Whether several colors are painted, and not by whole fills alone: a page may cut them off. */
  private static boolean isMoreThanFills(List<PaintedShape> shapes, ArtworkPage page) {
    boolean fills =
        !page.hasEdge()
            && shapes.stream()
                .noneMatch(s -> s.line() || !s.clips().isEmpty() || !s.masks().isEmpty());
    return !fills && shapes.stream().map(PaintedShape::hex).distinct().count() > 1;
  }

  private static boolean isLetter(SceneVisitor.Lines scene, int i) {
    return scene.texts().stream().anyMatch(t -> t.from() <= i && i < t.to());
  }

  private void add(PaintedShape s, ClippedOutlines clips, String layer) {
    if (s.line()) {
      for (List<Vec> chain : PathFlattener.chains(parts(s.outline(), false), toMm, tolerance)) {
        Line whole = new Line(chain);
        addLines(clips.cut(s, whole).orElse(List.of(whole)), layer);
      }
      List<Ring> whole = new ArrayList<>();
      for (Ring ring : PathFlattener.rings(parts(s.outline(), true), toMm, tolerance)) {
        clips.cut(s, ring).ifPresentOrElse(seen -> addLines(seen, layer), () -> whole.add(ring));
      }
      add(whole, rule(s), Optional.empty(), layer);
    } else {
      List<Ring> rings = PathFlattener.rings(s.outline(), toMm, tolerance);
      Optional<Region> seen = clips.cut(s, rings, rule(s));
      add(seen.map(Region::rings).orElse(rings), rule(s), Optional.of(s.hex()), layer);
    }
  }

  private void addLines(List<Line> seen, String layer) {
    seen.forEach(line -> lines.add(new DrawnOutlines.DrawnLine(line, layer)));
  }

  private void add(List<Ring> rings, FillRule rule, Optional<String> fill, String layer) {
    if (!rings.isEmpty()) {
      outlines.add(new DrawnOutline(rings, rule, fill, layer));
    }
  }

  private static FillRule rule(PaintedShape s) {
    return s.outline().getWindingRule() == PathIterator.WIND_EVEN_ODD
        ? FillRule.EVEN_ODD
        : FillRule.NONZERO;
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
