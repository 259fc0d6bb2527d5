package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.drawing.Text;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.words.Words;
import slabwright.work.SilicaShift;
import slabwright.work.WorkPlan;
import slabwright.work.WorkSamples;
import slabwright.work.days.PersonRota;

/** The crew's page of a day itself names who wears a respirator for dust. */
class CrewDustTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE, MMM d", Locale.ENGLISH);

  /** One person both grinds by hand and walks the machine on some days, so that hours add up. */
  @ParameterizedTest
  @ValueSource(ints = {1, 3})
  void whom_table_1_asks_for_a_respirator_is_named_on_the_page_of_that_day(int people) {
    WorkPlan plan =
        WorkSamples.plan(
            HALL.site(), WorkSamples.bookWith("crew", "", "people", String.valueOf(people)));
    List<PrintedPage> pages =
        PacketSet.of(
                Packet.CREW,
                new PacketContents(
                    HALL.site(),
                    HALL.results(),
                    plan,
                    PaperSize.LETTER,
                    SheetSamples.DAY,
                    Words.english()))
            .pages();
    List<SilicaShift> shifts = SilicaShift.of(plan, plan.days().maybe().orElseThrow());
    assertThat(shifts).isNotEmpty();
    if (people == 1) {
      assertThat(shifts).anyMatch(s -> s.respirator().isPresent());
    }
    for (SilicaShift s : shifts) {
      String said = said(pages, s);
      assertThat(said).contains("Silica dust: vacuum on").contains("P100");
      assertThat(said.contains("at the hand grinder: " + PersonRota.letter(s.person())))
          .as("%s %s", s, said)
          .isEqualTo(s.respirator().isPresent());
    }
  }

  private static String said(List<PrintedPage> pages, SilicaShift s) {
    String title = s.day().format(DAY);
    return pages.stream()
        .filter(p -> p.title().startsWith(title) || words(p).startsWith(title))
        .map(CrewDustTest::words)
        .collect(Collectors.joining(" "));
  }

  private static String words(PrintedPage page) {
    return page.drawing().plain().stream()
        .filter(Text.class::isInstance)
        .map(t -> ((Text) t).words())
        .collect(Collectors.joining(" "));
  }
}
