package slabwright.pdfin.painted;

import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdmodel.PDPage;
import slabwright.pdfin.page.PdfBudget;

/**
 * The path that a page's operators build point by point, within the budget, and the clip that it
 * leaves. What is painted with it is for those who extend this.
 */
abstract class PdfPathEngine extends PDFGraphicsStreamEngine {
  private static final int NO_CLIP = -1;

  private final PdfBudget budget = new PdfBudget();
  private Path2D.Double path = new Path2D.Double();
  private int clipRule = NO_CLIP;

  PdfPathEngine(PDPage page) {
    super(page);
  }

  final PdfBudget budget() {
    return budget;
  }

  /** The path as far as it is built. */
  final Path2D path() {
    return path;
  }

  /** Takes the path away, to be gone on with later; a new one begins. */
  final Path2D.Double openPath() {
    Path2D.Double open = path;
    path = new Path2D.Double();
    return open;
  }

  final void goOnWith(Path2D.Double open) {
    path = open;
  }

  @Override
  protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
    budget.operator(getGraphicsStackSize());
    super.processOperator(operator, operands);
  }

  @Override
  public void moveTo(float x, float y) {
    budget.point();
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    begin(x, y);
    path.lineTo(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    begin(x1, y1);
    path.curveTo(x1, y1, x2, y2, x3, y3);
  }

  /** A path that forgot to start does so at its first point. */
  private void begin(float x, float y) {
    budget.point();
    if (path.getCurrentPoint() == null) {
      path.moveTo(x, y);
    }
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    budget.point();
    path.moveTo(p0.getX(), p0.getY());
    path.lineTo(p1.getX(), p1.getY());
    path.lineTo(p2.getX(), p2.getY());
    path.lineTo(p3.getX(), p3.getY());
    path.closePath();
  }

  @Override
  public void closePath() {
    if (path.getCurrentPoint() != null) {
      path.closePath();
    }
  }

  @Override
  public Point2D getCurrentPoint() {
    return path.getCurrentPoint();
  }

  @Override
  public void clip(int windingRule) {
    clipRule = windingRule;
  }

  /** Clips by the path when that was asked for, then forgets it. */
  @Override
  public void endPath() {
    if (clipRule != NO_CLIP && path.getCurrentPoint() != null) {
      budget.clip(getGraphicsState().getCurrentClippingPaths().size());
      path.setWindingRule(clipRule);
      getGraphicsState().intersectClippingPath(new GeneralPath(path));
    }
    clipRule = NO_CLIP;
    path = new Path2D.Double();
  }
}
