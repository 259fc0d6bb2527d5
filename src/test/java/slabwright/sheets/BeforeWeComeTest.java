package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slabwright.drawing.Text;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;

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
  void a_film_on_a_slab_that_reads_damp_stands_against_the_job_and_is_signed_by_the_client() {
    assertThat(all(Packet.OFFICE))
        .contains("The slab reads over 75 % RH")
        .contains("nobody has decided on it")
        .doesNotContain("Nothing that is known stands against the job");
    assertThat(all(Packet.CLIENT)).contains("I know this and accept it");
  }
}
