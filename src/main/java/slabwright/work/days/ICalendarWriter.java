package slabwright.work.days;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import slabwright.units.Message;
import slabwright.units.QuarterHour;

/**
 * The day plan as iCalendar texts (RFC 5545): for the crew one all-day event a working day with its
 * list, for the client and other trades the times to keep off and what the owner sees to. Times are
 * local without a zone, as on site, and in quarter hours and on the clock of the sheets ({@link
 * QuarterHour}). Lines end in CRLF and are folded at 75 octets of UTF-8, never inside a character
 * (3.1); text values are escaped (3.3.11).
 */
public final class ICalendarWriter {
  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyyMMdd", Locale.ROOT);
  private static final int LINE_OCTETS = 75;

  /** A working day with what is done on it, a line each. */
  public record Day(LocalDate on, List<String> lines) {
    public Day {
      lines = List.copyOf(lines);
    }
  }

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
   * @param days as the crew's pages tell them, in their order
   * @param made when, for the required time stamp; passed in so that the same plan gives the same
   *     text
   * @param say gives messages their words
   */
  public static String of(
      List<Day> days, String site, Instant made, Function<Message, String> say) {
    return new ICalendarWriter(site, made, say).write(w -> w.days(days));
  }

  /**
   * Writes the calendar of the client and other trades: what the owner sees to, which floor is
   * closed to them, and when nobody may be near.
   */
  public static String forOthers(
      DayPlan plan,
      List<OwnerDuty> duties,
      List<ClosedFloor> closed,
      String site,
      Instant made,
      Function<Message, String> say) {
    return new ICalendarWriter(site, made, say)
        .write(
            w -> {
              duties.forEach(w::duty);
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

  private void days(List<Day> days) {
    for (int i = 0; i < days.size(); i++) {
      Day day = days.get(i);
      begin("day." + day.on());
      line("DTSTART;VALUE=DATE:" + DAY.format(day.on()));
      line("DTEND;VALUE=DATE:" + DAY.format(day.on().plusDays(1)));
      end(
          Message.of("work.icalendar-writer.day", site, i + 1, days.size()),
          String.join("\n", day.lines()));
    }
  }

  /** One moment has no end: an end must lie after its start (3.8.2.2). */
  private void duty(OwnerDuty d) {
    begin(d.id() + "." + LOCAL.format(d.span().start()));
    if (d.span().length().isZero()) {
      line("DTSTART:" + local(d.span().start()));
    } else {
      shut(d.span());
    }
    end(d.summary(), say.apply(d.why()));
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
