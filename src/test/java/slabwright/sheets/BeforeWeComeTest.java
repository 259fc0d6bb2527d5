package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slabwright.drawing.Text;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.units.QuarterHour;
import slabwright.work.days.ICalendarWriter;
import slabwright.work.days.KeepOutPeriod;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.handover.OwnerTimes;
import slabwright.work.step.StepKind;

/** What the tram hall's client sees to before the crew comes, and signs. */
class BeforeWeComeTest {
  private static final PacketContents JOB = SheetSamples.tramHall().job(PaperSize.LETTER);

  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE, MMM d, h:mm a", Locale.US);
  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("h:mm a", Locale.US);

  private static String all(Packet packet) {
    return PacketSet.of(packet, JOB).pages().stream()
        .map(BeforeWeComeTest::words)
        .collect(Collectors.joining("\n"));
  }

  private static String words(PrintedPage page) {
    return page.drawing().plain().stream()
        .filter(Text.class::isInstance)
        .map(t -> ((Text) t).words().replace('\u00a0', ' '))
        .collect(Collectors.joining(" "));
  }

  @Test
  void the_client_has_a_list_with_dates_and_the_day_on_which_the_sample_panel_is_signed() {
    String client = all(Packet.CLIENT);
    assertThat(client)
        .contains("Before we come")
        .contains("by Mon, Dec 7")
        .contains("pilot lights out")
        .contains("heaters with a flame")
        .contains("Smoke detectors that dust sets off")
        .contains("A key")
        .containsPattern("Signed on site, Thu, Dec 10, \\d\\d?:\\d\\d PM or later, before any dye");
  }

  @Test
  void the_client_is_asked_in_to_sign_when_the_air_of_the_sample_panel_is_clear() {
    ScheduledStep panel =
        JOB.work().days().maybe().orElseThrow().steps().stream()
            .filter(s -> s.task().type().kind() == StepKind.SAMPLE_PANEL)
            .findFirst()
            .orElseThrow();
    LocalDateTime clear =
        KeepOutPeriod.of(JOB.work().days().maybe().orElseThrow()).stream()
            .map(k -> k.span().end())
            .filter(t -> !t.isBefore(panel.end()))
            .findFirst()
            .orElseThrow();
    assertThat(QuarterHour.up(clear)).isAfter(QuarterHour.up(panel.end()));
    assertThat(all(Packet.CLIENT))
        .contains(
            "Signed on site, "
                + DateTimeFormatter.ofPattern("EEE, MMM d, h:mm a", Locale.US)
                    .format(QuarterHour.up(clear)))
        .contains("the crew brings you in when the air is clear");
  }

  /** What the calendar of the client says of one kind: its stretches as the client's page would. */
  private static List<String> calendar(String kind) {
    String ics =
        ICalendarWriter.forOthers(
            JOB.work().days().maybe().orElseThrow(),
            OwnerTimes.of(JOB.work()).duties(),
            List.of(),
            "hall",
            Instant.EPOCH,
            JOB.words()::say);
    Pattern event =
        Pattern.compile("UID:" + kind + "\\..*\\R.*\\RDTSTART:(.*)\\R(?:DTEND:(.*)\\R)?SUMMARY:");
    return event
        .matcher(ics)
        .results()
        .map(
            e ->
                DAY.format(LocalDateTime.parse(e.group(1), LOCAL))
                    + (e.group(2) == null
                        ? ""
                        : "–" + HOUR.format(LocalDateTime.parse(e.group(2), LOCAL))))
        .toList();
  }

  @Test
  void the_clients_calendar_has_the_hours_of_the_clients_page_and_no_heater_is_lit_early_by_it() {
    String client = all(Packet.CLIENT);
    assertThat(calendar("flames"))
        .hasSize(5)
        .contains("Thu, Dec 10, 9:30 AM–4:30 PM")
        .allMatch(client::contains);
    assertThat(calendar("cleared")).hasSize(1).allMatch(t -> client.contains("by " + t + ": "));
    assertThat(calendar("sample"))
        .hasSize(1)
        .allMatch(t -> client.contains(t + ": Sign the sample panel"));
  }

  /** The panel is signed at 1:00 PM on a floor whose heaters stay off until 4:30 PM. */
  @Test
  void who_signs_the_panel_while_heaters_are_off_is_no_contradiction_to_nobody_but_the_crew() {
    String client = all(Packet.CLIENT);
    TimeSpan off = OwnerTimes.of(JOB.work()).flames().get(0);
    LocalDateTime signed = OwnerTimes.of(JOB.work()).signing().orElseThrow();
    assertThat(signed).isAfter(off.start()).isBefore(off.end());
    assertThat(client)
        .contains("Nobody but the crew on these floors, or with it in clear air.")
        .contains("1:00 PM: Sign the sample panel before dye; the crew brings you in when the air")
        .contains("Client, page 4 of 4");
  }

  @Test
  void smoke_detectors_are_told_day_by_day_and_none_is_off_overnight() {
    List<String> dust = calendar("detectors");
    assertThat(dust).hasSize(4);
    assertThat(all(Packet.CLIENT))
        .contains("from Mon, Dec 7, 9:00 AM until Thu, Dec 10, 8:30 AM: Smoke detectors")
        .contains("a fire watch; on again each day when dusty work ends.");
    assertThat(OwnerTimes.of(JOB.work()).detectors())
        .allMatch(t -> t.start().toLocalDate().equals(t.end().toLocalDate()));
  }

  @Test
  void a_film_on_a_slab_that_reads_damp_stands_against_the_job_and_is_signed_by_the_client() {
    assertThat(all(Packet.OFFICE))
        .contains("The slab reads over 75 % RH")
        .contains("nobody has decided on it")
        .doesNotContain("Nothing that is known stands against the job");
    assertThat(all(Packet.CLIENT)).contains("I know this and accept it");
  }
}
