package slabwright.work.days;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import slabwright.units.Message;
import slabwright.units.QuarterHour;

/**
 * The day plan as iCalendar texts (RFC 5545): for the crew one all-day event a working day with its
 * list, for the client and other trades the times to keep off. Times are local without a zone, as
 * on site, and in quarter hours and on the clock of the sheets ({@link QuarterHour}). Lines end in
 * CRLF and are folded at 75 octets of UTF-8, never inside a character (3.1); text values are
 * escaped (3.3.11).
 */
public final class ICalendarWriter {
  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyyMMdd", Locale.ROOT);
  private static final int LINE_OCTETS = 75;

  private final StringBuilder out = new StringBuilder();
  private final String stamp;
  private final String site;
  private final Function<Message, String> say;

  private ICalendarWriter(String site, Instant made, Function<Message, String> say) {
    this.say = say;
    this.site = site;
    this.stamp = LOCAL.format(made.atZone(ZoneOffset.UTC)) + "Z";
  }

  /**
   * Writes the crew's calendar: an all-day event a working day.
   *
   * @param made when, for the required time stamp; passed in so that the same plan gives the same
   *     text
   * @param say gives messages their words
   */
  public static String of(DayPlan plan, String site, Instant made, Function<Message, String> say) {
    return new ICalendarWriter(site, made, say).write(w -> w.days(plan));
  }

  /**
   * Writes the calendar of the client and other trades: which floor is closed to them, and when
   * nobody may be near.
   */
  public static String forOthers(
      DayPlan plan,
      List<ClosedFloor> closed,
      String site,
      Instant made,
      Function<Message, String> say) {
    return new ICalendarWriter(site, made, say)
        .write(
            w -> {
              closed.forEach(w::closed);
              KeepOutPeriod.of(plan).forEach(w::keepOut);
            });
  }

  private String write(Consumer<ICalendarWriter> events) {
    line("BEGIN:VCALENDAR");
    line("VERSION:2.0");
    line("PRODID:-//Slabwright//Day plan//EN");
    line("CALSCALE:GREGORIAN");
    events.accept(this);
    line("END:VCALENDAR");
    return out.toString();
  }

  private void days(DayPlan plan) {
    SortedMap<LocalDate, List<String>> days = new TreeMap<>();
    record Stretch(ScheduledStep step, TimeSpan span) {}
    plan.steps().stream()
        .flatMap(s -> s.spans().stream().map(span -> new Stretch(s, span)))
        .sorted(
            Comparator.comparing((Stretch s) -> s.span().start())
                .thenComparing(s -> letters(s.step())))
        .forEach(
            s ->
                days.computeIfAbsent(s.span().start().toLocalDate(), d -> new ArrayList<>())
                    .add(entry(s.step(), s.span().toldAsWork())));
    int n = 0;
    for (Map.Entry<LocalDate, List<String>> day : days.entrySet()) {
      n++;
      begin("day." + day.getKey());
      line("DTSTART;VALUE=DATE:" + DAY.format(day.getKey()));
      line("DTEND;VALUE=DATE:" + DAY.format(day.getKey().plusDays(1)));
      end(
          Message.of("work.icalendar-writer.day", site, n, days.size()),
          String.join("\n", day.getValue()));
    }
  }

  private String entry(ScheduledStep step, TimeSpan span) {
    LocalTime from = span.start().toLocalTime();
    LocalTime to = span.end().toLocalTime();
    Message what = step.task().name();
    String who = letters(step);
    String area = step.task().area();
    return say.apply(
        area.isBlank() // work of the whole job
            ? Message.of("work.icalendar-writer.entry-of-job", from, to, what, who)
            : Message.of("work.icalendar-writer.entry", from, to, what, who, area));
  }

  /** The persons as on the crew's pages. */
  private static String letters(ScheduledStep step) {
    return step.who().persons().stream()
        .sorted()
        .map(PersonRota::letter)
        .collect(Collectors.joining(", "));
  }

  private void closed(ClosedFloor c) {
    begin("shut." + c.areaId() + "." + LOCAL.format(c.span().start()));
    shut(c.span());
    end(c.summary(), say.apply(c.why()));
  }

  private void shut(TimeSpan span) {
    line("DTSTART:" + local(span.toldAsShut().start()));
    line("DTEND:" + local(span.toldAsShut().end()));
  }

  private void keepOut(KeepOutPeriod o) {
    begin("out." + o.area() + "." + LOCAL.format(o.span().start()));
    shut(o.span());
    end(Message.of("work.icalendar-writer.keep-off", o.area()), reasons(o));
  }

  private String reasons(KeepOutPeriod o) {
    return o.reasons().stream().map(say).collect(Collectors.joining(", "));
  }

  private void begin(String uid) {
    line("BEGIN:VEVENT");
    line("UID:" + text(uid + "@" + site).replace(' ', '-'));
    line("DTSTAMP:" + stamp);
  }

  private void end(Message summary, String description) {
    line("SUMMARY:" + text(say.apply(summary)));
    line("LOCATION:" + text(site));
    line("DESCRIPTION:" + text(description));
    line("END:VEVENT");
  }

  private static String local(LocalDateTime t) {
    return LOCAL.format(t);
  }

  /** A text value: backslash, semicolon, comma and line ends escaped, other controls left out. */
  static String text(String s) {
    return s.replace("\\", "\\\\")
        .replace(";", "\\;")
        .replace(",", "\\,")
        .replace("\r\n", "\\n")
        .replace("\n", "\\n")
        .replaceAll("[\\x00-\\x08\\x0b-\\x1f\\x7f]", "");
  }

  private void line(String content) {
    out.append(folded(content));
  }

  static String folded(String content) {
    StringBuilder folded = new StringBuilder();
    int octets = 0;
    for (int i = 0; i < content.length(); ) {
      String character = Character.toString(content.codePointAt(i));
      int size = character.getBytes(StandardCharsets.UTF_8).length;
      if (octets + size > LINE_OCTETS) {
        folded.append("\r\n ");
        octets = 1;
      }
      folded.append(character);
      octets += size;
      i += character.length();
    }
    return folded.append("\r\n").toString();
  }
}
