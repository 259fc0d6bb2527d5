package slabwright.figures;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Colour;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.words.Words;
import slabwright.work.days.DayBars;
import slabwright.work.days.TimeSpan;

/** Day bars on paper: one row a step, one column a day. */
public final class DayBarChart {
  private static final double ROW = 5.4;
  private static final double HEAD = 4.2;
  private static final TextStyle WORDS = TextStyle.plain(2.3);

  private final DayBars bars;
  private final double width;
  private final Words names;
  private final List<Ink> inks = new ArrayList<>();

  private DayBarChart(DayBars bars, double width, Words names) {
    this.names = names;
    this.bars = bars;
    this.width = width;
  }

  /** A drawing on paper of the width in mm. */
  public static Drawing of(DayBars bars, double width, Words words) {
    return new DayBarChart(bars, width, words).drawing();
  }

  private Drawing drawing() {
    double height = HEAD + ROW * bars.rows().size();
    days(height);
    for (int i = 0; i < bars.rows().size(); i++) {
      row(bars.rows().get(i), HEAD + i * ROW);
    }
    return Drawing.paper(width, height, inks);
  }

  private double x(LocalDateTime t) {
    double all = Math.max(1, Duration.between(bars.from(), bars.to()).toMinutes());
    return width * Duration.between(bars.from(), t).toMinutes() / all;
  }

  private void days(double height) {
    LocalDate day = bars.from().toLocalDate();
    double last = -10;
    while (!day.isAfter(bars.to().toLocalDate())) {
      double at = Math.max(0, x(day.atStartOfDay()));
      inks.add(Stroke.line(Pen.of(0.15, Palette.RULE), new Vec(at, 0), new Vec(at, height)));
      if (at - last > 8) {
        inks.add(
            Text.start(
                new Vec(at + 0.5, 2.6),
                String.valueOf(day.getDayOfMonth()),
                WORDS.in(Palette.SOFT)));
        last = at;
      }
      day = day.plusDays(1);
    }
  }

  private void row(DayBars.Row row, double y) {
    for (DayBars.Bar bar : row.bars()) {
      TimeSpan s = bar.span();
      Bounds b =
          new Bounds(x(s.start()), y + 2.9, Math.max(x(s.end()), x(s.start()) + 0.5), y + 4.9);
      if (bar.kind() == DayBars.Kind.WORK) {
        inks.add(Fill.of(Palette.TEAL, b));
        if (row.critical()) {
          Ring rim = Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY());
          inks.add(Stroke.rings(Pen.of(0.3, Palette.RED), List.of(rim)));
        }
      } else if (bar.kind() == DayBars.Kind.DRYING) {
        inks.add(Fill.of(pale(), b));
      } else {
        thin(bar.kind(), b);
      }
    }
    String words = TextMeasure.fittedBeforeComma(names.say(row.name()), WORDS, width);
    double w = TextMeasure.width(words, WORDS);
    double at = row.bars().isEmpty() ? 0 : x(row.bars().get(0).span().start());
    inks.add(Text.start(new Vec(Math.max(0, Math.min(at, width - w)), y + 2.3), words, WORDS));
  }

  /** The open recoat window as a line through the middle, keeping off as one below. */
  private void thin(DayBars.Kind kind, Bounds b) {
    boolean window = kind == DayBars.Kind.WINDOW;
    double y = window ? (b.minY() + b.maxY()) / 2 : b.maxY() + 0.3;
    Pen pen = window ? Pen.of(0.7, Palette.GREEN) : Pen.of(0.5, Palette.RED).dashed(1, 0.6);
    inks.add(Stroke.line(pen, new Vec(b.minX(), y), new Vec(b.maxX(), y)));
  }

  private static Colour pale() {
    return Palette.TEAL.mixed(Palette.WHITE, 0.72);
  }
}
