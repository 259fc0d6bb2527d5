package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirScreening;
import slabwright.work.air.Curve;

/** Vapour over time as a share of the lower explosive limit, with and without the stated air. */
record AirPicture(AirScreening air) implements Block {
  private static final int SAMPLES = 160;
  private static final Pen CLOSED = Pen.of(0.6, Palette.RED);
  private static final Pen STATED = Pen.of(0.6, Palette.BLUE).dashed(3, 1);
  private static final Pen LIMIT = Pen.of(0.35, Palette.INK).dashed(1, 1);

  @Override
  public List<Slice> slices(Type type, double width) {
    double k = type.k();
    double height = 52 * k;
    double left = 15 * k;
    double foot = height - 8 * k;
    double until = Math.max(60, air.closed().lel().end() * 1.15);
    double top = Math.max(1.1 * air.closed().peakLel(), 1.3 * AirFigures.HAZARDOUS_SHARE);
    Plot plot = new Plot(left, 4 * k, width - 2 * k, foot, until, top);
    List<Ink> inks = new ArrayList<>(plot.axes(type));
    inks.add(plot.level(AirFigures.HAZARDOUS_SHARE, LIMIT));
    if (top >= 1) {
      inks.add(plot.level(1, Pen.of(0.5, Palette.INK)));
    }
    inks.add(plot.curve(air.closed().lel(), CLOSED));
    air.stated().ifPresent(s -> inks.add(plot.curve(s.lel(), STATED)));
    List<Slice> slices = new ArrayList<>();
    slices.add(new Slice(height + 2 * k, true, inks));
    slices.addAll(key().slices(type, width));
    return slices;
  }

  private Key key() {
    List<Key.Entry> entries = new ArrayList<>();
    entries.add(Key.line(CLOSED, "no fresh air, room mean"));
    if (air.stated().isPresent()) {
      entries.add(Key.line(STATED, "with the fresh air stated on the plan"));
    }
    entries.add(Key.line(LIMIT, "10 % of the lower explosive limit: hazardous atmosphere"));
    return Key.of(entries);
  }

  /** A field from 0 to {@code until} minutes and from 0 to {@code top} times the limit. */
  private record Plot(
      double left, double head, double right, double foot, double until, double top) {
    Vec at(double minute, double share) {
      double y = foot - (foot - head) * Math.min(share / top, 1);
      return new Vec(left + (right - left) * minute / until, y);
    }

    Ink level(double share, Pen pen) {
      return Stroke.line(pen, at(0, share), at(until, share));
    }

    Ink curve(Curve curve, Pen pen) {
      List<Vec> points =
          curve.samples(until, SAMPLES).stream().map(s -> at(s.minute(), s.share())).toList();
      return Stroke.lines(pen, List.of(new Line(points)));
    }

    List<Ink> axes(Type type) {
      List<Ink> inks = new ArrayList<>();
      Pen pen = Pen.of(0.3, Palette.INK);
      inks.add(Stroke.line(pen, at(0, top), at(0, 0), at(until, 0)));
      double k = type.k();
      for (double share : ticks(top)) {
        Vec p = at(0, share);
        inks.add(Stroke.line(pen, p, p.minus(new Vec(1, 0))));
        inks.add(Text.end(p.plus(new Vec(-1.6, 0.9 * k)), Words.percent(share), type.small()));
      }
      for (double hours : ticks(until / 60)) {
        Vec p = at(hours * 60, 0);
        inks.add(Stroke.line(pen, p, p.plus(new Vec(0, 1))));
        String words = trimmed(hours) + " h";
        inks.add(Text.middle(p.plus(new Vec(0, 4 * k)), words, type.small()));
      }
      inks.add(
          Text.start(
              new Vec(left + 1.5, head - 1 * k), "share of the explosive limit", type.small()));
      return inks;
    }

    private static String trimmed(double v) {
      return v == Math.rint(v) ? Long.toString(Math.round(v)) : Double.toString(v);
    }

    /** Round steps up to the top, four to eight of them. */
    private static List<Double> ticks(double top) {
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
}
