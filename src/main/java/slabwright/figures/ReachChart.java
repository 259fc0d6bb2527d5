package slabwright.figures;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Colour;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.drawing.Text;
import slabwright.drawing.TextStyle;
import slabwright.floor.reach.ReachCurve;
import slabwright.floor.reach.ReachPoint;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.site.Machine;
import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/**
 * The share of the floor that one machine alone would grind, against the width of its body, as inks
 * in mm of paper from the chart's top-left corner; the plan's machines are numbered on it. The desk
 * and sheet 2 draw the same ones.
 *
 * @param curves as found first, then with the trenches level; not empty
 * @param k the type size, 1 on Tabloid
 */
public record ReachChart(
    List<ReachCurve> curves,
    List<Machine> machines,
    UnitSystem units,
    Words words,
    double width,
    double height,
    double k) {
  public static final Pen FOUND = Pen.of(0.6, Palette.BLUE);
  public static final Pen LEVEL = Pen.of(0.6, Palette.GREEN).dashed(2.6, 1);
  private static final Colour BODY = Palette.RED;

  public ReachChart {
    curves = List.copyOf(curves);
    machines = List.copyOf(machines);
  }

  /** Everything: axes, curves, and the machines by number. */
  public List<Ink> inks() {
    List<Ink> inks = new ArrayList<>();
    shares(inks);
    widths(inks);
    for (ReachCurve c : curves) {
      List<Vec> line = c.points().stream().map(p -> at(p.body(), c.share(p))).toList();
      inks.add(Stroke.lines(c.levelled() ? LEVEL : FOUND, List.of(new Line(line))));
    }
    for (int i = 0; i < machines.size(); i++) {
      machine(inks, i);
    }
    return inks;
  }

  /** The width of body that a place on the chart stands for, mm, held to the ends. */
  public double bodyAt(double x) {
    double t = (x - field().minX()) / field().width();
    return from() + Math.max(0, Math.min(1, t)) * (until() - from());
  }

  /** An upright line at a width, for what is pointed at. */
  public List<Ink> pointer(double body) {
    Pen pen = Pen.of(0.25, Palette.INK);
    List<Ink> inks = new ArrayList<>();
    inks.add(Stroke.line(pen, at(body, least()), at(body, 1)));
    curves.forEach(
        c -> inks.add(Symbol.of(Symbol.Kind.POINT, at(body, c.share(body)), 2, Palette.INK)));
    return inks;
  }

  /** The chart's inner field. */
  private Bounds field() {
    return new Bounds(12 * k, 8 * k, width - 3 * k, height - 8.5 * k);
  }

  private double from() {
    return curves.get(0).points().get(0).body();
  }

  private double until() {
    List<ReachPoint> points = curves.get(0).points();
    return points.get(points.size() - 1).body();
  }

  /** The foot of the chart: a whole fifth below the smallest share. */
  private double least() {
    double least =
        curves.stream()
            .flatMap(c -> c.points().stream().map(c::share))
            .mapToDouble(Double::doubleValue)
            .min()
            .orElse(0);
    return Math.max(0, Math.min(0.8, Math.floor(least * 5 - 1e-9) / 5));
  }

  private Vec at(double body, double share) {
    Bounds f = field();
    double x = f.minX() + f.width() * (body - from()) / (until() - from());
    return new Vec(x, f.maxY() - f.height() * (share - least()) / (1 - least()));
  }

  private TextStyle small() {
    return TextStyle.plain(2.5 * k).in(Palette.SOFT);
  }

  private void shares(List<Ink> inks) {
    double step = least() < 0.5 ? 0.2 : least() < 0.75 ? 0.1 : 0.05;
    for (double share = least(); share < 1 + 1e-9; share += step) {
      Vec p = at(from(), share);
      inks.add(Stroke.line(Pen.of(0.12, Palette.RULE), p, at(until(), share)));
      String shown = Math.round(share * 100) + " %";
      inks.add(Text.end(p.plus(new Vec(-1.4 * k, 0.9 * k)), shown, small()));
    }
    inks.add(
        Stroke.line(
            Pen.of(0.3, Palette.INK), at(from(), 1), at(from(), least()), at(until(), least())));
  }

  private void widths(List<Ink> inks) {
    double step = units == UnitSystem.METRIC ? 200 : 304.8;
    for (double body = step; body <= until() + 1e-9; body += step) {
      if (body >= from() - 1e-9) {
        Vec p = at(body, least());
        inks.add(Stroke.line(Pen.of(0.3, Palette.INK), p, p.plus(new Vec(0, k))));
        String shown = LengthFormat.show(body, units);
        inks.add(Text.middle(p.plus(new Vec(0, 4 * k)), shown, small()));
      }
    }
    Vec end = new Vec(field().maxX(), height - 0.8 * k);
    inks.add(Text.end(end, words.say("figures.reach-chart.width"), small()));
  }

  private void machine(List<Ink> inks, int i) {
    double body = machines.get(i).body().mm();
    if (body < from() || body > until()) {
      return;
    }
    Vec head = new Vec(at(body, 1).x(), 3 * k);
    inks.add(
        Stroke.line(
            Pen.of(0.3, BODY).dashed(1, 0.8), head.plus(new Vec(0, 2 * k)), at(body, least())));
    Vec clear = new Vec(apart(i) * k, 0);
    inks.add(Fill.of(Palette.WHITE, Bounds.EMPTY.including(head.plus(clear)).grown(2 * k)));
    inks.add(Symbol.number(head.plus(clear), Integer.toString(i + 1), 4.2 * k));
  }

  /** Numbers of machines about as wide stand side by side. */
  private double apart(int i) {
    double x = at(machines.get(i).body().mm(), 1).x();
    for (int j = 0; j < machines.size(); j++) {
      double other = at(machines.get(j).body().mm(), 1).x();
      if (j != i && Math.abs(x - other) < 5 * k) {
        return x > other || (x == other && i > j) ? 2.4 : -2.4;
      }
    }
    return 0;
  }
}
