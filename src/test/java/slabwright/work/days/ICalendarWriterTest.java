package slabwright.work.days;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.work.Said;

class ICalendarWriterTest {
  private static final Instant MADE = Instant.parse("2026-11-25T08:00:00Z");
  private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);
  private static final List<ICalendarWriter.Day> DAYS =
      List.of(
          new ICalendarWriter.Day(MONDAY, List.of("7:30 A, B: Grind", "then A: Vacuum")),
          new ICalendarWriter.Day(MONDAY.plusDays(1), List.of("7:30 A: Seal")));

  @Test
  void one_event_of_all_day_stands_for_each_working_day_with_its_list() {
    String text = ICalendarWriter.of(DAYS, "Tram Hall Library", MADE, Said::of);
    assertThat(text)
        .startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:")
        .endsWith("END:VCALENDAR\r\n")
        .contains("DTSTAMP:20261125T080000Z\r\n")
        .contains("DTSTART;VALUE=DATE:20270301\r\nDTEND;VALUE=DATE:20270302\r\n")
        .contains("SUMMARY:Tram Hall Library\\, day 2 of 2\r\n")
        .contains("DESCRIPTION:7:30 A\\, B: Grind\\nthen A: Vacuum\r\n");
    assertThat(text.split("BEGIN:VEVENT", -1)).hasSize(3);
  }

  @Test
  void commas_semicolons_backslashes_and_line_ends_are_escaped() {
    assertThat(ICalendarWriter.text("a,b;c\\d\ne")).isEqualTo("a\\,b\\;c\\\\d\\ne");
  }

  @Test
  void long_lines_fold_at_75_octets_and_never_inside_a_character() {
    String name = "Reiher €".repeat(40);
    String folded = ICalendarWriter.folded("SUMMARY:" + name);
    for (String line : folded.split("\r\n", -1)) {
      assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75);
    }
    assertThat(folded.replace("\r\n ", "").strip()).isEqualTo("SUMMARY:" + name);
  }

  @Test
  void a_line_of_exactly_75_octets_is_not_folded() {
    assertThat(ICalendarWriter.folded("x".repeat(75))).isEqualTo("x".repeat(75) + "\r\n");
    assertThat(ICalendarWriter.folded("x".repeat(76))).contains("\r\n x\r\n");
  }
}
