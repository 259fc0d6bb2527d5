package slabwright.inlay.artwork.batik;

import java.awt.AlphaComposite;
import java.awt.Paint;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.CompositeShapePainter;
import org.apache.batik.gvt.FillShapePainter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.MarkerShapePainter;
import org.apache.batik.gvt.ProxyGraphicsNode;
import org.apache.batik.gvt.RootGraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.apache.batik.gvt.ShapePainter;
import org.apache.batik.gvt.StrokeShapePainter;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.ClipOutlines;
import slabwright.inlay.artwork.OutlineBudget;
import slabwright.inlay.artwork.PaintedShape;
import slabwright.inlay.artwork.Rgba;
import slabwright.inlay.artwork.SeeThrough;
import slabwright.inlay.artwork.SoftMask;
import slabwright.inlay.artwork.StrokeOutliner;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.shape.Vec;
import slabwright.units.Message;

/** Walks the tree of things to paint, in paint order, and notes each as an outline on the page. */
final class SceneVisitor {
  /** What is fainter than this is not painted. */
  static final double FAINTEST = 0.002;

  private static final String WHITE = "#ffffff";

  /** A frame squeezed more than a million times one way is a line on any floor. */
  private static final double FLATTEST = 1e-6;

  private final List<PaintedShape> shapes = new ArrayList<>();
  private final List<Lines.Lettering> texts = new ArrayList<>();
  private final OutlineBudget budget = new OutlineBudget();
  private final WarningCollector notes;

  private final Purpose purpose;

  /** What the outlines are for. */
  private enum Purpose {
    /** To be seen. */
    ARTWORK,
    /** To let through what is half bright, so each keeps its own paint. */
    MASK,
    /** To be compared: strokes stay lines. */
    LINES
  }

  private SceneVisitor(WarningCollector notes, Purpose purpose) {
    this.notes = notes;
    this.purpose = purpose;
  }

  public static List<PaintedShape> shapes(
      GraphicsNode root, AffineTransform toPage, WarningCollector notes) {
    return shapes(root, toPage, notes, Purpose.ARTWORK);
  }

  private static List<PaintedShape> shapes(
      GraphicsNode root, AffineTransform toPage, WarningCollector notes, Purpose purpose) {
    SceneVisitor walk = new SceneVisitor(notes, purpose);
    walk.visit(root, SceneState.start(toPage));
    return walk.shapes;
  }

  /**
   * What is drawn, strokes as the lines they follow.
   *
   * @param texts each with the shapes that are its letters, from one index to before another
   */
  record Lines(List<PaintedShape> shapes, List<Lettering> texts) {
    /** A text kept as text; its middle is in the page's pixels. */
    record Lettering(String text, Vec at, int from, int to) {}
  }

  /** As {@link #shapes}, but strokes are kept as the lines they follow. */
  public static Lines shapesAndLines(GraphicsNode root, WarningCollector notes) {
    SceneVisitor walk = new SceneVisitor(notes, Purpose.LINES);
    walk.visit(root, SceneState.start(new AffineTransform()));
    return new Lines(walk.shapes, walk.texts);
  }

  private void visit(GraphicsNode node, SceneState outer) {
    SceneState state = entered(node, outer);
    if (state.alpha() < FAINTEST || isFlat(state.toPage())) {
      return;
    }
    if (node.getFilter() != null) {
      note(Kind.EFFECT_LEFT_OUT, Message.of("inlay.scene-visitor.effect-left-out"), node, outer);
    }
    if (node instanceof CompositeGraphicsNode group) {
      for (Object child : group.getChildren()) {
        visit((GraphicsNode) child, state);
      }
    } else if (node instanceof ProxyGraphicsNode proxy) {
      visit(proxy.getSource(), state);
    } else if (node instanceof TextNode text) {
      if (text.isVisible()) {
        int from = shapes.size();
        new TextVisitor(this, notes).visit(text, state);
        note(text, from, state);
      }
    } else if (node instanceof ShapeNode shape) {
      if (shape.isVisible() && shape.getShape() != null) {
        paint(shape.getShapePainter(), shape, state);
      }
    }
  }

  /** Whether all that is drawn falls on one line, where there is nothing to see or to cut. */
  private static boolean isFlat(AffineTransform to) {
    double norm =
        to.getScaleX() * to.getScaleX()
            + to.getShearX() * to.getShearX()
            + to.getScaleY() * to.getScaleY()
            + to.getShearY() * to.getShearY();
    return !(Math.abs(to.getDeterminant()) > FLATTEST * norm);
  }

  private void note(TextNode text, int from, SceneState state) {
    Rectangle2D box = text.getGeometryBounds();
    if (box != null && text.getText() != null) {
      double[] at = {box.getCenterX(), box.getCenterY()};
      state.toPage().transform(at, 0, at, 0, 1);
      texts.add(
          new Lines.Lettering(text.getText().strip(), new Vec(at[0], at[1]), from, shapes.size()));
    }
  }

  private SceneState entered(GraphicsNode node, SceneState outer) {
    SceneState state = outer.within(node.getTransform());
    if (node.getComposite() instanceof AlphaComposite a) {
      state = state.faded(a.getAlpha());
    }
    if (node.getClip() != null && !isPageToCompare(node)) {
      ClipOutlines clip = ClipCarrier.outlines(node.getClip().getClipPath());
      state = state.clipped(clip.transformed(state.toPage()));
    }
    if (node.getMask() != null) {
      state = state.masked(mask(node, state));
    }
    return state;
  }

  /** The page hides nothing of what is compared: a cutter's program takes it whole. */
  private boolean isPageToCompare(GraphicsNode node) {
    return purpose == Purpose.LINES && node.getParent() instanceof RootGraphicsNode;
  }

  private SoftMask mask(GraphicsNode node, SceneState state) {
    GraphicsNode content = node.getMask().getMaskNode();
    List<PaintedShape> painted = shapes(content, state.toPage(), notes, Purpose.MASK);
    if (node.getMask() instanceof MaskBridge.AlphaMask) {
      painted = painted.stream().map(s -> s.in(WHITE)).toList();
    }
    ClipOutlines extent =
        ClipCarrier.outlines(node.getMask().getFilterRegion()).transformed(state.toPage());
    note(Kind.MASK, Message.of("inlay.scene-visitor.mask-at-half-brightness"), node, state);
    return new SoftMask(painted, extent);
  }

  private void paint(ShapePainter painter, ShapeNode node, SceneState state) {
    if (painter instanceof CompositeShapePainter all) {
      for (int i = 0; i < all.getShapePainterCount(); i++) {
        paint(all.getShapePainter(i), node, state);
      }
    } else if (painter instanceof FillShapePainter fill) {
      fill(FineOutline.of(node.getShape()), fill.getPaint(), state);
    } else if (painter instanceof StrokeShapePainter stroke) {
      stroke(FineOutline.of(node.getShape()), stroke.getStroke(), stroke.getPaint(), state);
    } else if (painter instanceof MarkerShapePainter markers) {
      for (GraphicsNode marker : MarkerNodes.of(markers)) {
        visit(marker, state);
      }
    }
  }

  void stroke(Path2D path, Stroke stroke, Paint paint, SceneState state) {
    if (stroke != null && paint != null) {
      boolean line = purpose == Purpose.LINES;
      Path2D drawn = line ? path : StrokeOutliner.outline(path, stroke, notes);
      add(drawn, paint, state, line ? PaintedShape.As.LINE : PaintedShape.As.STROKE);
    }
  }

  /** Notes a filled outline, given in the state's user space. */
  void fill(Path2D path, Paint paint, SceneState state) {
    add(path, paint, state, PaintedShape.As.FILL);
  }

  private void add(Path2D path, Paint paint, SceneState state, PaintedShape.As as) {
    if (paint == null) {
      return;
    }
    List<HardBands.Band> bands = HardBands.of(paint, path.getBounds2D());
    for (HardBands.Band band : bands) {
      ClipOutlines.Part part =
          new ClipOutlines.Part(new Path2D.Double(band.where(), state.toPage()), Optional.empty());
      ClipOutlines clip = new ClipOutlines(List.of(part), Optional.empty());
      add(path, band.colour(), bands.size() == 1 ? state : state.clipped(clip), as);
    }
    if (!bands.isEmpty()) {
      return;
    }
    Path2D onPage = new Path2D.Double(path, state.toPage());
    budget.add(onPage);
    Rectangle2D box = onPage.getBounds2D();
    Vec place = new Vec(box.getCenterX(), box.getCenterY());
    Optional<Rgba> colour = PaintColour.of(paint, place, notes);
    double alpha = state.alpha() * colour.map(Rgba::alpha).orElse(0.0);
    if (colour.isEmpty() || alpha < FAINTEST) {
      return;
    }
    String hex =
        purpose == Purpose.ARTWORK
            ? SeeThrough.colour(colour.get(), alpha, place, notes)
            : colour.get().hex();
    shapes.add(new PaintedShape(onPage, hex, alpha, state.clips(), state.masks(), as));
  }

  private void note(Kind kind, Message text, GraphicsNode node, SceneState state) {
    Rectangle2D box = node.getGeometryBounds();
    if (box == null) {
      notes.add(kind, text);
      return;
    }
    double[] at = {box.getCenterX(), box.getCenterY()};
    state.toPage().transform(at, 0, at, 0, 1);
    notes.add(kind, text, new Vec(at[0], at[1]));
  }
}
