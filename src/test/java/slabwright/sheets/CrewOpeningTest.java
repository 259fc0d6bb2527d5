package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.drawing.Text;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.words.Words;
import slabwright.work.Presence;
import slabwright.work.days.DayPlan;

/** What is done before a day's first row, and what has no time of its own or comes late. */
class CrewOpeningTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("H:mm", Locale.US);

  private static String words(PrintedPage page) {
    return page.drawing().plain().stream()
        .filter(Text.class::isInstance)
        .map(t -> ((Text) t).words())
        .collect(Collectors.joining(" "))
        .replaceAll("[\\s\u00a0\u202f]+", " ");
  }

  private static List<String> pages(PaperSize paper, Words said) {
    return HALL.packet(Packet.CREW, paper, said).pages().stream()
        .map(CrewOpeningTest::words)
        .toList();
  }

  private static String crew() {
    return String.join(" ", pages(PaperSize.LETTER, Words.english()));
  }

  /** Days on which the crew is paid from before its first step. */
  private static List<Presence.Day> paidBefore(PacketContents job) {
    DayPlan plan = job.work().days().maybe().orElseThrow();
    return Presence.of(plan, job.work().book()).days().stream()
        .filter(
            d ->
                plan.steps().stream()
                    .flatMap(s -> s.spans().stream())
                    .filter(s -> s.start().toLocalDate().equals(d.span().start().toLocalDate()))
                    .allMatch(s -> s.start().isAfter(d.span().start())))
        .toList();
  }

  @ParameterizedTest
  @CsvSource({"en, LETTER", "en, A4", "es, LETTER", "es, A4"})
  void each_day_with_setting_up_that_is_paid_begins_with_it_and_goes_on_with_work_on_that_page(
      String language, PaperSize paper) {
    Words said = Words.of(Locale.forLanguageTag(language));
    List<Presence.Day> paid = paidBefore(HALL.job(paper, said));
    String setUp = said.say("sheets.crew-opening.set-up", "7:30");
    List<String> opened = pages(paper, said).stream().filter(p -> p.contains(setUp)).toList();
    assertThat(paid).hasSizeGreaterThan(5);
    assertThat(opened).hasSameSizeAs(paid);
    for (int i = 0; i < paid.size(); i++) {
      String from = CLOCK.format(paid.get(i).span().start());
      assertThat(opened.get(i)).containsPattern(from + " A(, [A-Z])* .* 7:30 [A-Z]");
    }
  }

  /** The first can of a day is opened at the first minute of its row. */
  @Test
  void what_must_stand_before_the_first_can_has_its_time_before_it() {
    assertThat(crew())
        .containsPattern("set up: work begins at 7:30 Before the first can, 7:30: the check list")
        .containsPattern("Before the first can, [^:]*:\\d\\d: the check list[^.]*power off at");
  }

  /** Its window ends at the minute at which the coat is on the floor. */
  @Test
  void the_first_batch_of_a_coat_that_begins_the_day_is_mixed_and_its_floor_cleared_before() {
    assertThat(crew())
        .contains("What the row of 7:30 tells first is done by then.")
        .contains(
            "Mix the first batch at its end: on the floor at 7:30, even if its line says later.");
  }

  @Test
  void a_coat_that_misses_its_last_moment_is_told_to_abrade_first() {
    assertThat(crew())
        .contains("at the latest Wednesday, Dec 16 7:30 AM; later only after abrading");
  }

  /** Film and fan come off in the middle of a day, in no step's minutes. */
  @Test
  void what_comes_off_first_in_the_middle_of_a_day_is_said_to_have_no_time_in_the_plan() {
    assertThat(crew())
        .containsPattern(
            "First: all masking film and tape [^.]*[.] The plan keeps no time for that");
  }

  /** Else nobody knows when to unlock, and the half hour before the first can is gone. */
  @Test
  void the_client_is_told_the_hour_at_which_the_crew_comes_after_the_first_day() {
    String client =
        HALL.packet(Packet.CLIENT, PaperSize.LETTER).pages().stream()
            .map(CrewOpeningTest::words)
            .collect(Collectors.joining(" "));
    assertThat(client).contains("somebody to open (from day 2 at 7:00 AM)");
  }

  /** The floor's dye waits three hours for each next coat; the panel has two hours and a break. */
  @Test
  void a_sample_panel_has_a_patch_of_one_coat_for_each_dye_and_the_client_signs_for_that() {
    String client =
        HALL.packet(Packet.CLIENT, PaperSize.LETTER).pages().stream()
            .map(CrewOpeningTest::words)
            .collect(Collectors.joining(" "));
    assertThat(crew()).contains("Each on a patch of its own, one coat, what dries longest first.");
    assertThat(client).contains("one coat of each color, is approved");
  }
}
