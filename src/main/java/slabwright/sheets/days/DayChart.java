package slabwright.sheets.days;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Fill;
import slabwright.drawing.FillStyle;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.figures.DayBarChart;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;
import slabwright.work.days.DayBars;
import slabwright.work.days.TimeSpan;

/**
 * The day plan as bars over days, a row a step; its key and the days stand again on every page.
 *
 * @param dated whether the days are real dates
 */
record DayChart(DayBars bars, boolean dated, SheetContext context) implements Block {
  private static final double NAMES = 0.27;
  private static final double LEAST_DAY = 9;
  private static final double KEY_SWATCH = 11;
  private static final double KEY_LINE = 5.4;
  private static final double NAME_LINE = 4.2;

  /**
   * With more rows than this they stand closer, so that a page of the smallest paper holds them.
   */
  private static final int MANY = 20;

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    List<Slice> slices = new ArrayList<>(repeatedHead(type, width));
    List<DayBars.Group> groups = bars.groups();
    for (DayBars.Group g : groups) {
      if (groups.size() > 1 || !g.area().isEmpty()) {
        String name = g.area().isEmpty() ? context.say("sheets.day-chart.whole-crew") : g.area();
        slices.add(area(name, type, width));
      }
      g.rows().forEach(r -> slices.add(row(r, type, width)));
    }
    slices.add(Slice.space(3 * type.k()));
    return slices;
  }

  @Override
  public List<Slice> repeatedHead(TypeSizes type, double width) {
    return List.of(key(type, width), days(type, width));
  }

  private Slice key(TypeSizes type, double width) {
    double k = type.k();
    List<FillStyle> looks = DayBarChart.looks();
    String[] words = {
      context.say("sheets.day-chart.critical"),
      context.say("sheets.day-chart.work"),
      context.say("sheets.day-chart.drying"),
      context.say("sheets.day-chart.window"),
      context.say("sheets.day-chart.keep-out")
    };
    List<Ink> inks = new ArrayList<>();
    double x = 0;
    double y = 0;
    for (int i = 0; i < looks.size(); i++) {
      double wide = KEY_SWATCH * k + TextMeasure.width(words[i], type.body());
      if (x > 0 && x + wide > width) {
        x = 0;
        y += KEY_LINE * k;
      }
      inks.addAll(looks.get(i).on(List.of(Ring.rectangle(x, y + 0.6 * k, x + 9 * k, y + 4.4 * k))));
      inks.add(Text.start(new Vec(x + KEY_SWATCH * k, y + 3.6 * k), words[i], type.body()));
      x += wide + 5 * k;
    }
    return new Slice(y + 8 * k, true, inks);
  }

  private double x(LocalDateTime t, double width) {
    double whole = Duration.between(first(), last()).toMinutes();
    double at = Duration.between(first(), t).toMinutes();
    return width * (NAMES + (1 - NAMES) * Math.min(1, Math.max(0, at / whole)));
  }

  private LocalDateTime first() {
    return bars.from().toLocalDate().atStartOfDay();
  }

  private LocalDateTime last() {
    return bars.to().toLocalDate().plusDays(1).atStartOfDay();
  }

  private Slice days(TypeSizes type, double width) {
    double k = type.k();
    double height = 6.5 * k;
    List<Ink> inks = new ArrayList<>();
    long count = Duration.between(first(), last()).toDays();
    double wide = width * (1 - NAMES) / count;
    long every = (long) Math.ceil(LEAST_DAY * 1.9 * k / wide);
    for (long i = 0; i < count; i += every) {
      LocalDateTime day = first().plusDays(i);
      String words = context.times().day(day, dated);
      String shown = TextMeasure.fitted(words, type.small(), wide * every - 1.5);
      inks.add(Text.start(new Vec(x(day, width) + 0.8, 4.2 * k), shown, type.small()));
    }
    inks.add(Stroke.line(Pen.of(0.4, Palette.INK), new Vec(0, height), new Vec(width, height)));
    return new Slice(height, true, inks);
  }

  private Slice area(String name, TypeSizes type, double width) {
    double k = type.k();
    double height = 7 * k;
    List<Ink> inks = new ArrayList<>(nights(height, width));
    inks.add(Text.start(new Vec(0, 5 * k), name, type.subheading()));
    inks.add(Stroke.line(Pen.of(0.25, Palette.INK), new Vec(0, height), new Vec(width, height)));
    return new Slice(height, true, inks);
  }

  /** When nobody works, as a pale field; where a new day begins, a line. */
  private List<Ink> nights(double height, double width) {
    List<Ink> inks = new ArrayList<>();
    for (TimeSpan night : bars.nights()) {
      Bounds b = new Bounds(x(night.start(), width), 0.3, x(night.end(), width), height - 0.1);
      inks.add(Fill.of(Palette.FIELD, b));
    }
    for (LocalDate d = bars.from().toLocalDate(); !d.isAfter(bars.to().toLocalDate()); ) {
      double x = x(d.atStartOfDay(), width);
      inks.add(Stroke.line(Pen.of(0.1, Palette.RULE), new Vec(x, 0), new Vec(x, height)));
      d = d.plusDays(1);
    }
    return inks;
  }

  private Slice row(DayBars.Row row, TypeSizes type, double width) {
    double k = type.k();
    TextStyle style = row.critical() ? type.strong() : type.body();
    String name = (row.critical() ? "● " : "") + context.say(row.name());
    List<String> lines = TextMeasure.wrap(name, style, width * NAMES - 3);
    double height =
        (bars.rows().size() > MANY ? 5.5 : 6.2) * k + (lines.size() - 1) * NAME_LINE * k;
    List<Ink> inks = new ArrayList<>(nights(height, width));
    for (int i = 0; i < lines.size(); i++) {
      inks.add(Text.start(new Vec(0, (4.2 + i * NAME_LINE) * k), lines.get(i), style));
    }
    for (DayBars.Kind kind : DayBars.Kind.values()) {
      row.bars().stream()
          .filter(b -> b.kind() == kind)
          .forEach(b -> inks.addAll(bar(b, row.critical(), k, width)));
    }
    inks.add(Stroke.line(Pen.of(0.1, Palette.RULE), new Vec(0, height), new Vec(width, height)));
    return new Slice(height, false, inks);
  }

  private List<Ink> bar(DayBars.Bar bar, boolean critical, double k, double width) {
    double from = x(bar.span().start(), width);
    double to = Math.max(x(bar.span().end(), width), from + 0.4);
    return DayBarChart.bar(bar.kind(), critical, from, to, 0, k);
  }
}
