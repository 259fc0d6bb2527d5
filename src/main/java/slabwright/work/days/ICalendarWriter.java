package slabwright.work.days;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import slabwright.units.Message;

/**
 * The day plan as an iCalendar text (RFC 5545): one event a working stretch, one a keep-out time.
 * Times are local without a zone, as on site, and in quarter hours as on the sheets ({@link
 * QuarterHour}). Lines end in CRLF and are folded at 75 octets of UTF-8, never inside a character
 * (3.1); text values are escaped (3.3.11).
 */
public final class ICalendarWriter {
  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);
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
   * Writes the calendar.
   *
   * @param made when, for the required time stamp; passed in so that the same plan gives the same
   *     text
   * @param say gives messages their words
   */
  public static String of(DayPlan plan, String site, Instant made, Function<Message, String> say) {
    return new ICalendarWriter(site, made, say).write(plan);
  }

  private String write(DayPlan plan) {
    line("BEGIN:VCALENDAR");
    line("VERSION:2.0");
    line("PRODID:-//Slabwright//Day plan//EN");
    line("CALSCALE:GREGORIAN");
    plan.steps().forEach(this::step);
    KeepOutPeriod.of(plan).forEach(this::keepOut);
    line("END:VCALENDAR");
    return out.toString();
  }

  private void step(ScheduledStep step) {
    List<TimeSpan> spans = step.spans();
    for (int i = 0; i < spans.size(); i++) {
      Message name = step.task().name();
      Message summary =
          spans.size() > 1
              ? Message.of("work.icalendar-writer.day-of", name, i + 1, spans.size())
              : name;
      event(
          "step." + step.task().id() + "." + i,
          QuarterHour.work(spans.get(i)),
          summary,
          Message.of("work.icalendar-writer.people", step.task().people(), step.task().area()));
    }
  }

  private void keepOut(KeepOutPeriod o) {
    event(
        "out." + o.area() + "." + LOCAL.format(o.span().start()),
        QuarterHour.shut(o.span()),
        Message.of("work.icalendar-writer.keep-off", o.area()),
        o.reason());
  }

  private void event(String uid, TimeSpan span, Message summary, Message description) {
    line("BEGIN:VEVENT");
    line("UID:" + text(uid + "@" + site).replace(' ', '-'));
    line("DTSTAMP:" + stamp);
    line("DTSTART:" + local(span.start()));
    line("DTEND:" + local(span.end()));
    line("SUMMARY:" + text(say.apply(summary)));
    line("LOCATION:" + text(site));
    line("DESCRIPTION:" + text(say.apply(description)));
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
