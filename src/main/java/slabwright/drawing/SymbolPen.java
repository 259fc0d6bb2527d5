package slabwright.drawing;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Draws one symbol in its own square from -1 to 1 (x right, y up), turned and set on paper. */
final class SymbolPen {
  private static final int CIRCLE_POINTS = 48;

  private final Symbol symbol;
  private final Pen pen;
  private final List<PrimitiveInk> parts = new ArrayList<>();

  SymbolPen(Symbol symbol) {
    this.symbol = symbol;
    this.pen = Pen.of(Math.max(0.2, symbol.size() * 0.065), symbol.colour());
  }

  List<PrimitiveInk> parts() {
    return parts;
  }

  SymbolPen line(double... xy) {
    parts.add(Stroke.line(pen, points(xy).toArray(new Vec[0])));
    return this;
  }

  /** A filled shape with an outline. */
  SymbolPen shape(Colour inside, double... xy) {
    return closed(inside, new Ring(points(xy)));
  }

  SymbolPen circle(Colour inside, double x, double y, double radius) {
    return closed(inside, new Ring(arcPoints(x, y, radius, 0, 360).subList(0, CIRCLE_POINTS)));
  }

  /** A dot without outline. */
  SymbolPen dot(double x, double y, double radius) {
    Ring ring = new Ring(arcPoints(x, y, radius, 0, 360).subList(0, CIRCLE_POINTS));
    parts.add(Fill.of(symbol.colour(), ring));
    return this;
  }

  SymbolPen arc(double x, double y, double radius, double from, double to) {
    parts.add(Stroke.lines(pen, List.of(new Line(arcPoints(x, y, radius, from, to)))));
    return this;
  }

  SymbolPen words(double em) {
    TextStyle style = TextStyle.bold(symbol.size() * em).in(symbol.colour());
    parts.add(Text.centred(symbol.at(), symbol.words(), style, 0));
    return this;
  }

  private SymbolPen closed(Colour inside, Ring ring) {
    parts.add(Fill.of(inside, ring));
    parts.add(Stroke.rings(pen, List.of(ring)));
    return this;
  }

  private List<Vec> arcPoints(double x, double y, double radius, double from, double to) {
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i <= CIRCLE_POINTS; i++) {
      double a = Math.toRadians(from + (to - from) * i / CIRCLE_POINTS);
      points.add(onPaper(x + radius * Math.cos(a), y + radius * Math.sin(a)));
    }
    return points;
  }

  private List<Vec> points(double... xy) {
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i + 1 < xy.length; i += 2) {
      points.add(onPaper(xy[i], xy[i + 1]));
    }
    return points;
  }

  private Vec onPaper(double x, double y) {
    double a = Math.toRadians(symbol.turn());
    double half = symbol.size() / 2;
    double right = x * Math.cos(a) - y * Math.sin(a);
    double up = x * Math.sin(a) + y * Math.cos(a);
    return new Vec(symbol.at().x() + right * half, symbol.at().y() - up * half);
  }
}
