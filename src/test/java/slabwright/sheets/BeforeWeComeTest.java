package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slabwright.drawing.Text;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.units.QuarterHour;
import slabwright.work.days.KeepOutPeriod;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.StepKind;

/** What the tram hall's client sees to before the crew comes, and signs. */
class BeforeWeComeTest {
  private static final PacketContents JOB = SheetSamples.tramHall().job(PaperSize.LETTER);

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
        .contains("smoke detectors that dust sets off")
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

  @Test
  void a_film_on_a_slab_that_reads_damp_stands_against_the_job_and_is_signed_by_the_client() {
    assertThat(all(Packet.OFFICE))
        .contains("The slab reads over 75 % RH")
        .contains("nobody has decided on it")
        .doesNotContain("Nothing that is known stands against the job");
    assertThat(all(Packet.CLIENT)).contains("I know this and accept it");
  }
}
