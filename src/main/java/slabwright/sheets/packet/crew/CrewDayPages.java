package slabwright.sheets.packet.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Colour;
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
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.SheetContext;
import slabwright.work.AreaResult;
import slabwright.work.step.StepPlace;

/**
 * One page a working day: what stands against the job in red, who does what when, the cautions in
 * the order of what kills first, when to stop, what is written down, and tomorrow. Rows that don't
 * fit, and rows that leave no room to show where, go on on another page; the cautions stand on the
 * first, when to stop on each.
 */
final class CrewDayPages {
  private static final double PAD = 3.5;
  private static final double WHO = 20;
  private static final double GAP = 3;
  private static final double LEAST_PICTURE = 40;
  private static final double SMALLEST_PICTURE = 24;

  /** Shares of the page that the cautions take where the picture stands beside them. */
  private static final List<Double> BESIDE_PICTURE = List.of(0.64, 0.72);

  /** Rows that go on on another page go in company. */
  private static final int LEAST_ROWS = 3;

  private static final String WIDEST_TIME = "00:00";
  private static final String WIDEST_LENGTH = "00 h 00 min";

  private final PacketContents job;
  private final CrewDayTexts texts;
  private final SheetContext context;
  private final Bounds body;
  private final double leading;

  CrewDayPages(PacketContents job) {
    this.job = job;
    this.texts = new CrewDayTexts(job);
    this.context = job.portrait();
    this.body = context.page().body();
    this.leading = 5.2;
  }

  List<PageDraft> drafts() {
    List<PageDraft> drafts = new ArrayList<>();
    List<CrewDay> days = texts.days();
    if (days.isEmpty()) {
      CrewDay none = new CrewDay(1, job.date(), List.of());
      drafts.addAll(drafts(none, texts.all().get(0), job.unread(), true));
    }
    for (CrewDay day : days) {
      boolean first = drafts.isEmpty();
      Optional<String> note = first ? job.unread() : Optional.empty();
      drafts.addAll(drafts(day, texts.text(day), note, first));
    }
    return drafts;
  }

  /**
   * The pages of a day.
   *
   * @param note above all else
   * @param first whether what stands against the job is told in full on the first of them
   */
  private List<PageDraft> drafts(
      CrewDay day, CrewDayText text, Optional<String> note, boolean first) {
    Strip brief = alerts(texts.briefAlerts());
    Strip alerts = first ? alerts(text.alerts()) : brief;
    Strip top = note.map(n -> alerts.under(note(n))).orElse(alerts);
    Strip cautions = cautions(text.cautions(), text.stops(), body.width());
    Strip foot = foot(text);
    List<Strip> rows = text.rows().stream().map(this::row).toList();
    String persons = texts.persons();
    String place =
        persons.isEmpty()
            ? text.place()
            : context.say("sheets.crew-day.place-and-persons", text.place(), persons);
    PageDraft draft = new PageDraft(text.title(), place, "", Optional.empty(), List.of());
    double all = rows.stream().mapToDouble(Strip::height).sum();
    double room = body.height() - top.height() - cautions.height() - GAP;
    double left = room - all - foot.height() - 2 * GAP;
    if (left >= -GAP && (day.isShort() || hasPicture(day, text, left))) {
      return List.of(draft.withInks(single(day, text, top, rows, foot)));
    }
    if (first && room < rows.stream().limit(1).mapToDouble(Strip::height).sum()) {
      return reasonsFirst(draft, day, text, top);
    }
    int fit = Strip.take(rows, 0, room - forPicture());
    int least = day.isOpened() ? Math.min(2, Strip.take(rows, 0, room)) : 1;
    int next = Math.max(least, Math.min(fit, rows.size() - LEAST_ROWS));
    List<Ink> inks = new ArrayList<>(top.at(body.minX(), body.minY()));
    double y = Strip.lay(inks, body.minX(), rows.subList(0, next), body.minY() + top.height());
    cautionsAndPicture(day.rows(0, next), text, y + GAP, body.maxY(), inks);
    List<PageDraft> pages = new ArrayList<>(List.of(draft.withInks(inks)));
    Strip stops = cautions(List.of(), text.stops(), body.width());
    more(day.rows(next, rows.size()), brief, rows.subList(next, rows.size()), stops, foot)
        .forEach(m -> pages.add(draft.continued(m, context.words())));
    return pages;
  }

  /** What stands against the job apart, where the day's cautions would lie over it. */
  private List<PageDraft> reasonsFirst(
      PageDraft draft, CrewDay day, CrewDayText text, Strip reasons) {
    Strip stops = cautions(List.of(), text.stops(), body.width());
    List<Ink> inks = new ArrayList<>(reasons.at(body.minX(), body.minY()));
    inks.addAll(stops.at(body.minX(), body.maxY() - stops.height()));
    List<PageDraft> pages = new ArrayList<>(List.of(draft.withInks(inks)));
    drafts(day, text, Optional.empty(), false)
        .forEach(p -> pages.add(draft.continued(p.inks(), context.words())));
    return pages;
  }

  /**
   * The pages after a day's first: the rows that are left, and on the last what ends the day.
   *
   * @param day what is left of it, an entry a row
   */
  private List<List<Ink>> more(
      CrewDay day, Strip alerts, List<Strip> rows, Strip stops, Strip foot) {
    List<List<Ink>> pages = new ArrayList<>();
    double top = body.minY() + alerts.height();
    double room = body.maxY() - top - stops.height() - GAP;
    double footTop = body.maxY() - foot.height() - GAP;
    int next = 0;
    boolean last = false;
    while (!last) {
      List<Ink> inks = new ArrayList<>(alerts.at(body.minX(), body.minY()));
      int to = Strip.take(rows, next, room - forPicture() - foot.height() - GAP);
      last = to == rows.size();
      // A day's last row goes on in company: by itself it may be on no floor.
      to = Math.min(Strip.take(rows, next, room - forPicture()), rows.size() - (last ? 0 : 2));
      to = Math.max(to, next + 1);
      double y = Strip.lay(inks, body.minX(), rows.subList(next, to), top);
      if (last) {
        inks.addAll(foot.at(body.minX(), body.maxY() - foot.height()));
      }
      double stop = (last ? footTop : body.maxY()) - stops.height();
      Bounds free = new Bounds(body.minX(), y + GAP, body.maxX(), stop - GAP);
      picture(day.rows(next, to), free, inks);
      inks.addAll(stops.at(body.minX(), stop));
      pages.add(inks);
      next = to;
    }
    return pages;
  }

  private List<Ink> single(
      CrewDay day, CrewDayText text, Strip alerts, List<Strip> rows, Strip foot) {
    List<Ink> inks = new ArrayList<>(alerts.at(body.minX(), body.minY()));
    double y = Strip.lay(inks, body.minX(), rows, body.minY() + alerts.height());
    double footTop = body.maxY() - foot.height();
    inks.addAll(foot.at(body.minX(), footTop));
    cautionsAndPicture(day, text, y + GAP, footTop - GAP, inks);
    return inks;
  }

  /** Kept free of rows; a job without days has one list of all its work and needs none. */
  private double forPicture() {
    return texts.isTimed() ? LEAST_PICTURE + GAP : 0;
  }

  /** Whether so much room between rows and cautions, or what is beside them, shows the places. */
  private boolean hasPicture(CrewDay day, CrewDayText text, double left) {
    double whole = cautions(text.cautions(), text.stops(), body.width()).height();
    return !texts.isTimed()
        || areas(day).isEmpty()
        || left >= SMALLEST_PICTURE
        || besidePicture(day, text, left + whole + GAP).isPresent();
  }

  /** How wide the cautions stand beside one floor's picture where they are at most so high. */
  private Optional<Double> besidePicture(CrewDay day, CrewDayText text, double height) {
    return areas(day).size() != 1
        ? Optional.empty()
        : BESIDE_PICTURE.stream()
            .map(share -> body.width() * share)
            .filter(w -> cautions(text.cautions(), text.stops(), w).height() <= height)
            .findFirst();
  }

  /**
   * The cautions at the foot of this height, and where the day's work is: above them, where the
   * rows leave too little room beside them, and where that is too little too nowhere.
   */
  private void cautionsAndPicture(
      CrewDay day, CrewDayText text, double top, double bottom, List<Ink> inks) {
    Strip whole = cautions(text.cautions(), text.stops(), body.width());
    double free = bottom - whole.height() - GAP;
    Optional<Double> width =
        free - top >= LEAST_PICTURE ? Optional.empty() : besidePicture(day, text, bottom - top);
    if (width.isEmpty()) {
      inks.addAll(whole.at(body.minX(), bottom - whole.height()));
      picture(day, new Bounds(body.minX(), top, body.maxX(), free), inks);
    } else {
      Strip narrow = cautions(text.cautions(), text.stops(), width.get());
      double beside = bottom - narrow.height();
      double x = body.maxX() - width.get();
      inks.addAll(narrow.at(x, beside));
      picture(day, new Bounds(body.minX(), beside, x - GAP, bottom), inks);
    }
  }

  /** The floor areas of a page's rows, all where there is none. */
  private List<AreaResult> areas(CrewDay day) {
    return day.entries().isEmpty()
        ? job.areas()
        : day.steps().stream()
            .map(s -> s.task().type().areaId())
            .distinct()
            .flatMap(id -> job.area(id).stream())
            .toList();
  }

  /**
   * The floor areas of a page's rows side by side, if there is room: none of an earlier page, which
   * may have its last coat by now.
   */
  private void picture(CrewDay day, Bounds box, List<Ink> inks) {
    List<AreaResult> areas = areas(day);
    if (box.height() < SMALLEST_PICTURE || areas.isEmpty()) {
      return;
    }
    double width = box.width() / areas.size();
    for (int i = 0; i < areas.size(); i++) {
      AreaResult area = areas.get(i);
      List<StepPlace> places =
          day.steps().stream()
              .filter(s -> s.task().type().isOn(area.takeoff().area().id()))
              .map(s -> s.task().type().subject().place())
              .distinct()
              .toList();
      double x = box.minX() + i * width;
      inks.addAll(
          new WorkPlacePicture(area, places, !day.entries().isEmpty(), context)
              .in(new Bounds(x, box.minY(), x + width - 2, box.maxY())));
    }
  }

  private Strip note(String words) {
    Lines lines = new Lines(0).say(0, words, context.type().small(), body.width()).gap(1);
    return new Strip(lines.y, lines.inks);
  }

  /** Lines one under the other; a style each. */
  private final class Lines {
    private final List<Ink> inks = new ArrayList<>();
    private double y;

    Lines(double top) {
      y = top;
    }

    Lines say(double x, String words, TextStyle style, double width) {
      for (String line : TextMeasure.wrap(words, style, width)) {
        double step = Math.max(leading, style.size() * 1.28);
        inks.add(Text.start(new Vec(x, y + step - 1.4), line, style));
        y += step;
      }
      return this;
    }

    Lines gap(double mm) {
      y += mm;
      return this;
    }
  }

  private TextStyle red(TextStyle style) {
    return style.in(Palette.RED);
  }

  /** In red, first of all. */
  private Strip alerts(List<String> alerts) {
    if (alerts.isEmpty()) {
      return new Strip(0, List.of());
    }
    double width = body.width() - 2 * PAD - 2;
    Lines lines = new Lines(PAD - 1);
    for (int i = 0; i < alerts.size(); i++) {
      TextStyle style = i == 0 ? context.type().heading() : context.type().body();
      lines.say(PAD + 2, alerts.get(i), red(style), width);
      lines.gap(1);
    }
    double height = lines.y + PAD - 1;
    List<Ink> inks = new ArrayList<>();
    inks.add(Fill.of(Palette.tint(Palette.RED), new Bounds(0, 0, body.width(), height)));
    inks.add(Fill.of(Palette.RED, new Bounds(0, 0, 2, height)));
    inks.addAll(lines.inks);
    return new Strip(height + GAP, inks);
  }

  private Strip row(CrewDayText.Row row) {
    double times = timeWidth();
    double at = times + WHO;
    double width = body.width() - at - PAD;
    TextStyle time = row.out() ? red(context.type().heading()) : context.type().heading();
    TextStyle who = row.out() ? red(context.type().strong()) : context.type().strong();
    TextStyle what = row.out() ? red(context.type().body()) : context.type().body();
    Lines left = new Lines(1.4).say(PAD, row.time(), time, times - PAD);
    Lines middle = new Lines(1.4).say(times, row.who(), who, WHO - 2);
    Lines right = new Lines(1.4).say(at, row.what(), what, width);
    row.details().forEach(d -> right.say(at, d, detail(row), width));
    double height = Math.max(Math.max(left.y, middle.y), right.y) + 1.6;
    List<Ink> inks = new ArrayList<>();
    if (row.out()) {
      inks.add(Fill.of(Palette.tint(Palette.RED), new Bounds(0, 0.3, body.width(), height - 0.3)));
    }
    inks.addAll(left.inks);
    inks.addAll(middle.inks);
    inks.addAll(right.inks);
    inks.add(
        Stroke.line(Pen.of(0.12, Palette.RULE), new Vec(0, height), new Vec(body.width(), height)));
    return new Strip(height, inks);
  }

  private TextStyle detail(CrewDayText.Row row) {
    return row.out() ? red(context.type().small()) : context.type().small();
  }

  private double timeWidth() {
    String widest = texts.isTimed() ? WIDEST_TIME : WIDEST_LENGTH;
    return PAD + TextMeasure.width(widest, context.type().heading()) + 4;
  }

  /** The five cautions and below them when to stop, in a box of this width. */
  private Strip cautions(List<String> cautions, List<String> stopping, double across) {
    double width = across - 2 * PAD;
    Lines lines = new Lines(PAD - 1);
    if (!cautions.isEmpty()) {
      String head = context.say("sheets.crew-day.in-this-order");
      lines.say(PAD, head, context.type().heading(), width);
    }
    for (int i = 0; i < cautions.size(); i++) {
      double y = lines.y;
      lines.say(PAD + 7, cautions.get(i), context.type().body(), width - 7);
      lines.inks.add(
          Text.start(
              new Vec(PAD, y + leading - 1.4), Integer.toString(i + 1), context.type().strong()));
    }
    lines.gap(cautions.isEmpty() ? 0 : 2);
    double top = lines.y;
    Lines stop = new Lines(top + 1.2);
    for (int i = 0; i < stopping.size(); i++) {
      TextStyle style = i == 0 ? context.type().heading() : context.type().strong();
      stop.say(PAD + 2, stopping.get(i), style.in(Palette.WHITE), width - 4);
    }
    double foot = stop.y + 1.8;
    double height = foot + PAD - 1;
    Colour edge = Palette.AMBER;
    List<Ink> inks = new ArrayList<>();
    inks.add(Fill.of(Palette.tint(edge), new Bounds(0, 0, across, height)));
    inks.add(Stroke.rings(Pen.of(0.5, Palette.INK), List.of(Ring.rectangle(0, 0, across, height))));
    inks.add(Fill.of(Palette.RED, new Bounds(PAD - 1, top, across - PAD + 1, foot)));
    inks.addAll(lines.inks);
    inks.addAll(stop.inks);
    return new Strip(height, inks);
  }

  /** Tomorrow, and lines to write readings on. */
  private Strip foot(CrewDayText text) {
    Lines lines = new Lines(0);
    text.lookOut().forEach(l -> lines.say(0, l, context.type().body(), body.width()));
    lines.gap(7);
    double each = body.width() / Math.max(1, text.readings().size());
    for (int i = 0; i < text.readings().size(); i++) {
      String words = text.readings().get(i);
      double x = i * each;
      double said = TextMeasure.width(words, context.type().small());
      lines.inks.add(Text.start(new Vec(x, lines.y), words, context.type().small()));
      lines.inks.add(
          Stroke.line(
              Pen.of(0.25, Palette.INK),
              new Vec(x + said + 1.5, lines.y + 0.6),
              new Vec(x + each - 3, lines.y + 0.6)));
    }
    lines.gap(2);
    return new Strip(lines.y, lines.inks);
  }
}
