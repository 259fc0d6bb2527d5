package slabwright.pdfin.painted;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import slabwright.shape.Vec;

/** From a page's own frame (points, y up, perhaps turned) to pixels, y down, as it is shown. */
final class PdfPageFrame {
  private static final double PX_PER_POINT = 96 / 72.0;

  private final AffineTransform toPage;
  private final Rectangle2D sheet;

  PdfPageFrame(PDPage page) {
    PDRectangle box = page.getCropBox();
    double w = box.getWidth();
    double h = box.getHeight();
    double k = PX_PER_POINT * page.getUserUnit();
    AffineTransform at = AffineTransform.getScaleInstance(k, k);
    switch (page.getRotation()) {
      case 90 -> at.concatenate(new AffineTransform(0, 1, -1, 0, h, 0));
      case 180 -> at.concatenate(new AffineTransform(-1, 0, 0, -1, w, h));
      case 270 -> at.concatenate(new AffineTransform(0, -1, 1, 0, 0, w));
      default -> {
        // stands upright
      }
    }
    at.concatenate(new AffineTransform(1, 0, 0, -1, -box.getLowerLeftX(), box.getUpperRightY()));
    this.toPage = at;
    this.sheet = new Rectangle2D.Double(box.getLowerLeftX(), box.getLowerLeftY(), w, h);
  }

  AffineTransform toPage() {
    return new AffineTransform(toPage);
  }

  /** The page in its own frame. */
  Rectangle2D sheet() {
    return sheet;
  }

  Vec middle(Rectangle2D box) {
    Point2D p = toPage.transform(new Point2D.Double(box.getCenterX(), box.getCenterY()), null);
    return new Vec(p.getX(), p.getY());
  }
}
