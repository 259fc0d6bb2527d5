package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.work.days.ICalendarWriter;

/** The crew's calendar of the tram hall beside its day pages. */
class CrewCalendarTest {
  private static final PacketContents JOB = SheetSamples.tramHall().job(PaperSize.LETTER);

  private static List<String> lines() {
    return CrewPacket.calendar(JOB).stream().flatMap(d -> d.lines().stream()).toList();
  }

  @Test
  void every_line_is_a_row_of_the_day_pages() {
    String pages = CrewPacket.html(JOB);
    for (ICalendarWriter.Day day : CrewPacket.calendar(JOB)) {
      for (String line : day.lines()) {
        assertThat(pages).contains(line.substring(line.indexOf(": ") + 2));
      }
    }
    assertThat(lines()).hasSizeGreaterThan(30);
  }

  @Test
  void mist_coats_are_one_line_with_their_wait_and_laying_is_one_with_pressing_and_paper() {
    // the second stencil gets its first coat on Friday and its other two on Monday
    assertThat(lines().stream().filter(l -> l.contains("Mist coat 1 through stencil 2 of 3")))
        .hasSize(1);
    assertThat(lines().stream().filter(l -> l.contains("ist coats ")))
        .hasSize(3)
        .allMatch(l -> l.contains("ist coats 1 to 3") || l.contains("ist coats 2 to 3"))
        .allMatch(l -> l.contains("at least 20 min apart"));
    assertThat(lines().stream().filter(l -> l.contains("Lay stencil")))
        .hasSize(3)
        .allMatch(l -> l.contains("press the edges"));
  }

  @Test
  void no_two_lines_of_a_day_begin_at_one_hour_for_one_person() {
    for (ICalendarWriter.Day day : CrewPacket.calendar(JOB)) {
      List<String> heads =
          day.lines().stream()
              .map(l -> l.substring(0, l.indexOf(": ")))
              .filter(l -> !l.startsWith("then"))
              .flatMap(
                  l -> {
                    int who = l.indexOf(' '); // the hour holds none that breaks
                    return List.of(l.substring(who + 1).split(", ", -1)).stream()
                        .map(p -> l.substring(0, who) + " " + p);
                  })
              .toList();
      assertThat(heads).as(day.on().toString()).doesNotHaveDuplicates();
    }
  }
}
