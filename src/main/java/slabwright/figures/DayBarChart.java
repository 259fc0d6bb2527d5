package slabwright.figures;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Colour;
import slabwright.drawing.Drawing;
import slabwright.drawing.FillStyle;
import slabwright.drawing.HatchPattern;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.words.Words;
import slabwright.work.days.DayBars;

/** Day bars on paper: one row a step, one column a day. */
public final class DayBarChart {
  private static final double ROW = 5.4;
  private static final double HEAD = 4.2;
  private static final TextStyle WORDS = TextStyle.plain(2.3);

  private final DayBars bars;
  private final double width;
  private final Words names;
  private final List<Ink> inks = new ArrayList<>();

  /** Size of the bars here to those of a page. */
  private static final double SMALL = 0.6;

  private static final FillStyle WORK = solid(Palette.BLUE);
  private static final FillStyle CRITICAL = solid(Palette.INK);
  private static final FillStyle DRYING = FillStyle.of(HatchPattern.DASHES, Palette.AMBER);
  private static final FillStyle WINDOW = FillStyle.of(HatchPattern.DOTS, Palette.GREEN);
  private static final FillStyle KEEP_OUT = FillStyle.of(HatchPattern.NET, Palette.RED);

  private DayBarChart(DayBars bars, double width, Words names) {
    this.names = names;
    this.bars = bars;
    this.width = width;
  }

  /** A drawing on paper of the width in mm. */
  public static Drawing of(DayBars bars, double width, Words words) {
    return new DayBarChart(bars, width, words).drawing();
  }

  private static FillStyle solid(Colour colour) {
    return new FillStyle(colour, HatchPattern.NONE, colour, 2, 0.2);
  }

  /** How bars look: work that sets the end, other work, drying, the recoat window, keeping out. */
  public static List<FillStyle> looks() {
    return List.of(CRITICAL, WORK, DRYING, WINDOW, KEEP_OUT);
  }

  /**
   * One bar of a row, on paper and screen alike; keeping out lies as a thin one below the others.
   *
   * @param from its left end, mm of paper
   * @param y upper edge of its row
   * @param k size of what is drawn
   */
  public static List<Ink> bar(
      DayBars.Kind kind, boolean critical, double from, double to, double y, double k) {
    boolean out = kind == DayBars.Kind.KEEP_OUT;
    FillStyle look =
        switch (kind) {
          case WORK -> critical ? CRITICAL : WORK;
          case DRYING -> DRYING;
          case WINDOW -> WINDOW;
          case KEEP_OUT -> KEEP_OUT;
        };
    double top = y + (out ? 4.4 : 1) * k;
    double foot = y + (out ? 5.3 : 4.2) * k;
    return look.on(List.of(Ring.rectangle(from, top, to, foot)));
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
      double from = x(bar.span().start());
      double to = Math.max(x(bar.span().end()), from + 0.5);
      inks.addAll(bar(bar.kind(), row.critical(), from, to, y + 2.3, SMALL));
    }
    String words = TextMeasure.fittedBeforeComma(names.say(row.name()), WORDS, width);
    double w = TextMeasure.width(words, WORDS);
    double at = row.bars().isEmpty() ? 0 : x(row.bars().get(0).span().start());
    inks.add(Text.start(new Vec(Math.max(0, Math.min(at, width - w)), y + 2.3), words, WORDS));
  }
}
