package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Colour;
import slabwright.drawing.Dimension;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Inks that tools lay over the plan while they work. */
public final class OverlayInks {
  /** Colour of what is being drawn or held. */
  public static final Colour LIVE = Colour.hex("0b66a3");

  private static final double WORDS = 2.9;

  private OverlayInks() {}

  /** A line being drawn. */
  public static Ink line(List<Vec> points) {
    return Stroke.lines(Pen.of(0.55, LIVE), List.of(new Line(points)));
  }

  /** A fine broken line: a guide, or what would follow. */
  public static Ink guide(Vec... points) {
    return Stroke.line(Pen.of(0.25, LIVE).dashed(1.1, 0.9), points);
  }

  /** A length beside its line. */
  public static Ink length(Vec a, Vec b, OverlayScale paper) {
    return length(a, b, 1, paper);
  }

  /**
   * A length beside its line.
   *
   * @param side 1 for the left as seen from the first to the second, -1 for the right
   */
  public static Ink length(Vec a, Vec b, int side, OverlayScale paper) {
    String words = paper.length(a.distanceTo(b));
    return new Dimension(a, b, 5.0 * side, words, TextStyle.bold(WORDS).in(LIVE));
  }

  /** A square that can be held. */
  public static List<Ink> handle(Vec at, OverlayScale paper) {
    double r = 1.05 * paper.mm();
    Ring box = Ring.rectangle(at.x() - r, at.y() - r, at.x() + r, at.y() + r);
    return List.of(Fill.of(Palette.WHITE, box), Stroke.rings(Pen.of(0.4, LIVE), List.of(box)));
  }

  /** A round dot. */
  public static Ink dot(Vec at, double size, Colour colour) {
    return Stroke.line(Pen.of(size, colour).rounded(), at, at);
  }

  /** A short arrow: the way on from a point. */
  public static List<Ink> ahead(Vec from, Vec way, OverlayScale paper) {
    Vec tip = from.plus(way.times(14 * paper.mm()));
    Vec back = way.times(-3 * paper.mm());
    Vec side = way.left().times(2 * paper.mm());
    return List.of(
        guide(from, tip),
        line(List.of(tip.plus(back).plus(side), tip, tip.plus(back).minus(side))));
  }

  /** The site's zero point, that typed places count from. */
  public static List<Ink> zero(OverlayScale paper) {
    double r = 4 * paper.mm();
    Vec foot = new Vec(-3.4 * paper.mm(), -3.8 * paper.mm());
    return List.of(
        Stroke.line(Pen.of(0.3, LIVE), new Vec(-r, 0), new Vec(r, 0)),
        Stroke.line(Pen.of(0.3, LIVE), new Vec(0, -r), new Vec(0, r)),
        Text.middle(foot, "0", TextStyle.bold(WORDS).in(LIVE)));
  }

  /** Words on a plate that hides what is under them. */
  public static List<Ink> plate(Vec at, String words, OverlayScale paper) {
    TextStyle style = TextStyle.bold(WORDS).in(Palette.WHITE);
    double w = (TextMeasure.width(words, style) / 2 + 1.4) * paper.mm();
    double h = 2.3 * paper.mm();
    Bounds b = new Bounds(at.x() - w, at.y() - h, at.x() + w, at.y() + h);
    Vec foot = new Vec(at.x(), at.y() - WORDS * TextMeasure.CAP_HEIGHT / 2 * paper.mm());
    return List.of(Fill.of(LIVE, b), Text.middle(foot, words, style));
  }

  /** Length and angle of the leg being drawn, beside its end. */
  public static List<Ink> leg(Vec from, Vec to, OverlayScale paper) {
    List<Ink> inks = new ArrayList<>();
    double length = from.distanceTo(to);
    if (length < paper.mm()) {
      return inks;
    }
    double angle = Math.toDegrees(to.minus(from).angle());
    String words = paper.length(length) + "   " + Math.round(angle * 10) / 10.0 + "°";
    Vec beside = to.plus(new Vec(16 * paper.mm(), 7 * paper.mm()));
    inks.addAll(plate(beside, words, paper));
    return inks;
  }
}
