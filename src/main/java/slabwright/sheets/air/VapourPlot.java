package slabwright.sheets.air;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.sheets.page.TypeSizes;
import slabwright.work.air.ConcentrationCurve;

/** A field between two minutes and from 0 to {@code top} times a limit. */
record VapourPlot(
    double left, double head, double right, double foot, double from, double until, double top) {
  private static final int SAMPLES = 240;

  Vec at(double minute, double share) {
    double y = foot - (foot - head) * share / top;
    double x = left + (right - left) * (minute - from) / (until - from);
    return new Vec(Math.max(left, Math.min(right, x)), y);
  }

  Ink level(double share, Pen pen) {
    return Stroke.line(pen, at(from, share), at(until, share));
  }

  /** The curve times a factor; every corner included. */
  Ink curve(ConcentrationCurve curve, double times, Pen pen) {
    List<Vec> points = new ArrayList<>();
    points.add(at(from, curve.at(from) * times));
    curve.samples(until, SAMPLES).stream()
        .filter(s -> s.minute() > from)
        .forEach(s -> points.add(at(s.minute(), s.share() * times)));
    return Stroke.lines(pen, List.of(new Line(points)));
  }

  List<Ink> axes(TypeSizes type, JobClock clock) {
    List<Ink> inks = new ArrayList<>();
    Pen pen = Pen.of(0.3, Palette.INK);
    inks.add(Stroke.line(pen, at(from, top), at(from, 0), at(until, 0)));
    double k = type.k();
    for (double share : ticks()) {
      Vec p = at(from, share);
      inks.add(Stroke.line(pen, p, p.minus(new Vec(1, 0))));
      inks.add(Text.end(p.plus(new Vec(-1.6, 0.9 * k)), ShareFormat.percent(share), type.small()));
    }
    double free = left;
    for (double t = clock.midnightAfter(from); t < until; t += 1440) {
      Vec p = at(t, 0);
      inks.add(Stroke.line(pen, p, p.plus(new Vec(0, 1.6))));
      String words = clock.day(t + 1);
      double width = TextMeasure.width(words, type.small());
      if (p.x() >= free && p.x() + width < right) {
        inks.add(Text.start(p.plus(new Vec(0.8, 4 * k)), words, type.small()));
        free = p.x() + width + 4;
      }
    }
    return inks;
  }

  /** Round steps up to the top, four to eight of them. */
  private List<Double> ticks() {
    double step = Math.pow(10, Math.floor(Math.log10(top)));
    while (top / step < 3) {
      step /= 2;
    }
    while (top / step > 7) {
      step *= 2;
    }
    List<Double> all = new ArrayList<>();
    for (int i = 1; i * step < top * 0.97; i++) {
      all.add(Math.round(i * step * 1e6) / 1e6);
    }
    return all;
  }
}
