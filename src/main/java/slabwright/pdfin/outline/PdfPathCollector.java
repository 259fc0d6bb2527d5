package slabwright.pdfin.outline;

import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import slabwright.pdfin.page.PdfBudget;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.shape.Window;
import slabwright.shape.curve.Bezier;

/** Runs a page's drawing operators and notes each path that is filled or stroked. */
final class PdfPathCollector extends PDFGraphicsStreamEngine {
  private static final double POINT_MM = 25.4 / 72;
  private static final double TOLERANCE_MM = 0.02;

  /** On a small page a drawing may stand for a large blank, so its curves are followed closer. */
  private static final double PAGE_SHARE = 5e-6;

  private static final double CLOSED = 1e-4;
  private static final int NO_CLIP = -1;
  private static final int UNKNOWN = -1;

  private final List<PdfOutline> outlines = new ArrayList<>();
  private final List<PdfOutlines.PdfLine> lines = new ArrayList<>();
  private final PdfWordCollector words = new PdfWordCollector();
  private final List<PdfOutlines.PdfWords> strokes = new ArrayList<>();
  private final Deque<String> layers = new ArrayDeque<>();
  private final Deque<Spoken> spoken = new ArrayDeque<>();
  private final double tolerance;
  private final double scale;
  private final PDRectangle sheet;
  private final List<Subpath> path = new ArrayList<>();
  private final PdfBudget budget = new PdfBudget();
  private final PdfWindows windows;
  private int clipRule = NO_CLIP;

  /** How many clips are the page's own: those before its first operator. */
  private int ofThePage = UNKNOWN;

  private Vec here = Vec.ZERO;
  private double pictured;

  /** What strokes from this line on draw, when the file says it. */
  private record Spoken(String text, int from) {}

  private static final class Subpath {
    final List<Vec> points = new ArrayList<>();
    boolean closed;
  }

  PdfPathCollector(PDPage page) {
    super(page);
    sheet = page.getCropBox();
    scale = POINT_MM * page.getUserUnit();
    tolerance =
        Math.min(TOLERANCE_MM, PAGE_SHARE * scale * Math.max(sheet.getWidth(), sheet.getHeight()));
    windows = new PdfWindows(this::mm, tolerance / scale, budget);
  }

  List<PdfOutline> outlines() {
    return outlines;
  }

  List<PdfOutlines.PdfLine> lines() {
    return lines;
  }

  List<PdfOutlines.PdfWords> words() {
    return Stream.concat(words.words().stream(), strokes.stream()).toList();
  }

  double tolerance() {
    return tolerance;
  }

  double pictured() {
    return pictured;
  }

  private Vec mm(double x, double y) {
    return new Vec((x - sheet.getLowerLeftX()) * scale, (sheet.getUpperRightY() - y) * scale);
  }

  @Override
  protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
    budget.operator(getGraphicsStackSize());
    if (ofThePage == UNKNOWN) {
      ofThePage = getGraphicsState().getCurrentClippingPaths().size();
    }
    super.processOperator(operator, operands);
  }

  @Override
  public void showForm(PDFormXObject form) throws IOException {
    budget.enter();
    super.showForm(form);
    budget.leave();
  }

  @Override
  public void showTransparencyGroup(PDTransparencyGroup group) throws IOException {
    budget.enter();
    super.showTransparencyGroup(group);
    budget.leave();
  }

  @Override
  public void moveTo(float x, float y) {
    budget.point();
    Subpath next = new Subpath();
    here = mm(x, y);
    next.points.add(here);
    path.add(next);
  }

  @Override
  public void lineTo(float x, float y) {
    budget.point();
    here = mm(x, y);
    current().points.add(here);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    List<Vec> curve = Bezier.cubic(here, mm(x1, y1), mm(x2, y2), mm(x3, y3), tolerance);
    budget.points(curve.size());
    current().points.addAll(curve);
    here = mm(x3, y3);
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    moveTo((float) p0.getX(), (float) p0.getY());
    for (Point2D p : List.of(p1, p2, p3)) {
      lineTo((float) p.getX(), (float) p.getY());
    }
    closePath();
  }

  @Override
  public void closePath() {
    if (!path.isEmpty()) {
      Subpath last = path.get(path.size() - 1);
      last.closed = true;
      here = last.points.get(0);
    }
  }

  /** The subpath to add to; what follows a closed one without a move starts at its first point. */
  private Subpath current() {
    if (path.isEmpty() || path.get(path.size() - 1).closed) {
      Subpath next = new Subpath();
      next.points.add(here);
      path.add(next);
    }
    return path.get(path.size() - 1);
  }

  @Override
  public Point2D getCurrentPoint() {
    return points(here);
  }

  private Point2D points(Vec mm) {
    return new Point2D.Double(
        mm.x() / scale + sheet.getLowerLeftX(), sheet.getUpperRightY() - mm.y() / scale);
  }

  /** Clips by the path when that was asked for, then forgets it. */
  @Override
  public void endPath() {
    if (clipRule != NO_CLIP && !path.isEmpty()) {
      budget.clip(getGraphicsState().getCurrentClippingPaths().size());
      getGraphicsState().intersectClippingPath(asPath(clipRule));
    }
    clipRule = NO_CLIP;
    path.clear();
  }

  private GeneralPath asPath(int rule) {
    GeneralPath all = new GeneralPath(rule);
    for (Subpath p : path) {
      Point2D first = points(p.points.get(0));
      all.moveTo(first.getX(), first.getY());
      for (Vec v : p.points.subList(1, p.points.size())) {
        Point2D next = points(v);
        all.lineTo(next.getX(), next.getY());
      }
      all.closePath();
    }
    return all;
  }

  @Override
  public void strokePath() {
    note(FillRule.NONZERO, Optional.empty());
    endPath();
  }

  @Override
  public void fillPath(int rule) throws IOException {
    note(rule(rule), Optional.of(fillColour()));
    endPath();
  }

  @Override
  public void fillAndStrokePath(int rule) throws IOException {
    note(rule(rule), Optional.of(fillColour()));
    endPath();
  }

  private static FillRule rule(int rule) {
    return rule == Path2D.WIND_EVEN_ODD ? FillRule.EVEN_ODD : FillRule.NONZERO;
  }

  private String fillColour() throws IOException {
    PDColor colour = getGraphicsState().getNonStrokingColor();
    // a pattern has no one colour; any that shows on white will do
    int rgb = colour.isPattern() ? 0x808080 : colour.toRGB();
    return "#%06x".formatted(rgb & 0xffffff);
  }

  private void note(FillRule rule, Optional<String> fill) {
    List<Path2D> all = getGraphicsState().getCurrentClippingPaths();
    List<Path2D> clips = all.subList(Math.min(ofThePage, all.size()), all.size());
    budget.shape(clips.size());
    Optional<Window> window = windows.of(clips);
    List<Ring> rings = new ArrayList<>();
    for (Subpath p : path) {
      if (p.points.size() >= 3 && (fill.isPresent() || p.closed || meets(p.points))) {
        rings.add(new Ring(p.points));
      } else if (fill.isEmpty() && p.points.size() >= 2) {
        Line whole = new Line(p.points);
        addLines(window.flatMap(w -> w.cut(whole)).orElse(List.of(whole)));
      }
    }
    List<Ring> seen =
        window.map(w -> fill.isPresent() ? filled(w, rings, rule) : closed(w, rings)).orElse(rings);
    if (!seen.isEmpty()) {
      outlines.add(new PdfOutline(seen, rule, fill, layer()));
    }
  }

  private List<Ring> filled(Window window, List<Ring> rings, FillRule rule) {
    budget.crossings(rings);
    return window.cut(rings, rule).map(Region::rings).orElse(rings);
  }

  /** The lines that show whole; what shows of the others are lines that don't close. */
  private List<Ring> closed(Window window, List<Ring> rings) {
    List<Ring> whole = new ArrayList<>();
    for (Ring ring : rings) {
      window.cut(ring).ifPresentOrElse(this::addLines, () -> whole.add(ring));
    }
    return whole;
  }

  private void addLines(List<Line> seen) {
    seen.forEach(l -> lines.add(new PdfOutlines.PdfLine(l, layer())));
  }

  private static boolean meets(List<Vec> points) {
    Vec first = points.get(0);
    double size = points.stream().mapToDouble(first::distanceTo).max().orElse(0);
    return first.distanceTo(points.get(points.size() - 1)) <= CLOSED * size;
  }

  @Override
  public void clip(int rule) {
    clipRule = rule;
  }

  @Override
  public void drawImage(PDImage image) {
    Matrix at = getGraphicsState().getCurrentTransformationMatrix();
    double turned = at.getValue(0, 0) * at.getValue(1, 1) - at.getValue(0, 1) * at.getValue(1, 0);
    double all = (double) sheet.getWidth() * sheet.getHeight();
    pictured = Math.max(pictured, Math.min(1, Math.abs(turned) / all));
  }

  @Override
  public void shadingFill(COSName name) {
    // a fade has no outline of its own
  }

  @Override
  protected void showGlyph(Matrix at, PDFont font, int code, Vector displacement)
      throws IOException {
    words.glyph(
        mm(at.getTranslateX(), at.getTranslateY()),
        new Vec(at.getValue(0, 0), -at.getValue(0, 1)).times(scale),
        displacement.getX(),
        font.toUnicode(code));
  }

  @Override
  public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
    super.beginMarkedContentSequence(tag, properties);
    boolean layer = COSName.OC.equals(tag) && properties != null;
    layers.push(layer ? properties.getString(COSName.NAME, "") : layer());
    String text = properties == null ? "" : properties.getString(COSName.ACTUAL_TEXT, "");
    spoken.push(new Spoken(text, lines.size()));
  }

  @Override
  public void endMarkedContentSequence() {
    super.endMarkedContentSequence();
    layers.poll();
    Spoken said = spoken.poll();
    if (said != null && !said.text.isEmpty() && lines.size() > said.from) {
      Bounds around = Bounds.EMPTY;
      for (PdfOutlines.PdfLine l : lines.subList(said.from, lines.size())) {
        around = around.including(Bounds.of(l.line().points()));
      }
      strokes.add(new PdfOutlines.PdfWords(said.text, around.middle()));
    }
  }

  private String layer() {
    return layers.isEmpty() ? "" : layers.peek();
  }
}
