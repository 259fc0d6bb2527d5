package slabwright.inlay.artwork;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.UnaryOperator;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.units.Message;

/**
 * Says what the page's edge cuts off. Told by the boxes of a shape and of its clips, so a shape
 * that its clip cuts aslant close to the edge may be named though nothing of it is lost.
 */
final class PageEdgeCheck {
  private static final double FLATNESS = 0.01;

  /** Less than this share of the page's longer side is not worth a word. */
  private static final double WORTH_SAYING = 1e-3;

  private final Bounds sheet;
  private final double least;

  private PageEdgeCheck(ArtworkPage page) {
    this.sheet = new Bounds(0, 0, page.width(), page.height());
    this.least = WORTH_SAYING * Math.max(page.width(), page.height());
  }

  /**
   * Notes each colour of which something is cut off.
   *
   * @param name the colour as the person sees it listed
   */
  static void note(
      List<PaintedShape> shapes,
      ArtworkPage page,
      UnaryOperator<String> name,
      WarningCollector notes) {
    PageEdgeCheck cut = new PageEdgeCheck(page);
    for (PaintedShape s : shapes) {
      if (cut.mayReachOver(s) && s.clips().stream().anyMatch(cut::isSheet)) {
        cut.note(cut.box(s), name.apply(s.hex()), notes);
      }
    }
  }

  /** A quick look that spares most shapes the flattening. */
  private boolean mayReachOver(PaintedShape s) {
    return !new Rectangle2D.Double(0, 0, sheet.width(), sheet.height())
        .contains(s.outline().getBounds2D());
  }

  private void note(Bounds box, String colour, WarningCollector notes) {
    if (box.isEmpty()) {
      return;
    }
    double left = sheet.minX() - box.minX();
    double right = box.maxX() - sheet.maxX();
    double over = sheet.minY() - box.minY();
    double under = box.maxY() - sheet.maxY();
    double most = Math.max(Math.max(left, right), Math.max(over, under));
    if (most > least) {
      Message text = Message.of("inlay.page-edge-check.cut-at-page", colour);
      Vec m = box.middle();
      double x = most == left ? sheet.minX() : most == right ? sheet.maxX() : m.x();
      double y = most == over ? sheet.minY() : most == under ? sheet.maxY() : m.y();
      notes.add(Kind.CUT_AT_PAGE, text, onSheet(x, y));
    }
  }

  private Vec onSheet(double x, double y) {
    return new Vec(
        Math.max(sheet.minX(), Math.min(sheet.maxX(), x)),
        Math.max(sheet.minY(), Math.min(sheet.maxY(), y)));
  }

  /** As far as the shape would reach if the page had no edge. */
  private Bounds box(PaintedShape s) {
    Bounds b = box(s.outline());
    for (ClipOutlines clip : s.clips()) {
      b = isSheet(clip) ? b : common(b, box(clip));
    }
    return b;
  }

  private boolean isSheet(ClipOutlines clip) {
    Bounds b = box(clip);
    double off =
        Math.abs(b.minX())
            + Math.abs(b.minY())
            + Math.abs(b.maxX() - sheet.maxX())
            + Math.abs(b.maxY() - sheet.maxY());
    return off < least;
  }

  private static Bounds box(ClipOutlines clip) {
    Bounds b = Bounds.EMPTY;
    for (ClipOutlines.Part part : clip.parts()) {
      b = b.including(box(part.outline()));
    }
    return b;
  }

  private static Bounds box(Path2D path) {
    Bounds b = Bounds.EMPTY;
    for (Ring ring : PathFlattener.rings(path, new AffineTransform(), FLATNESS)) {
      b = b.including(ring.bounds());
    }
    return b;
  }

  private static Bounds common(Bounds a, Bounds b) {
    double minX = Math.max(a.minX(), b.minX());
    double minY = Math.max(a.minY(), b.minY());
    double maxX = Math.min(a.maxX(), b.maxX());
    double maxY = Math.min(a.maxY(), b.maxY());
    return minX < maxX && minY < maxY ? new Bounds(minX, minY, maxX, maxY) : Bounds.EMPTY;
  }
}
