package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slabwright.drawing.Text;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.PaperSize;

/**
 * What the tram hall's crew and fire papers and its load list say of the air that the plan asks
 * for.
 */
class FansShortTest {
  private static final PacketContents JOB = SheetSamples.tramHall().job(PaperSize.LETTER);

  private static String all(Packet packet) {
    return PacketSet.of(packet, JOB).pages().stream()
        .flatMap(p -> p.drawing().plain().stream())
        .filter(Text.class::isInstance)
        .map(t -> ((Text) t).words().replace('\u00a0', ' '))
        .collect(Collectors.joining(" "));
  }

  @Test
  void the_crew_that_sets_up_a_fan_reads_that_it_moves_too_little_and_opens_no_can() {
    assertThat(all(Packet.CREW))
        .contains(
            "TOO LITTLE AIR: 2,001 cfm by the plan, the job's fans move 1,800 cfm. One more like it"
                + " first; no can is opened before.");
  }

  /** M1 to M3 on the fire plan's hall, and an FE beside each of three ways out. */
  @Test
  void what_the_fire_plan_shows_is_what_is_loaded() {
    List<String> plan = words(Packet.FIRE_AND_SAFETY, 0);
    assertThat(plan).contains("M1", "M2", "M3").doesNotContain("M4");
    // one more in the key
    assertThat(plan.stream().filter("FE"::equals)).hasSize(3 + 1);
    assertThat(all(Packet.OFFICE))
        .containsPattern("M1 36.0 ft, M2 18.0 ft, M3 24.0 ft; ?Terrace M1 15.0 ft")
        .contains("one a way out: 3;");
  }

  private static List<String> words(Packet packet, int page) {
    return PacketSet.of(packet, JOB).pages().get(page).drawing().plain().stream()
        .filter(Text.class::isInstance)
        .map(t -> ((Text) t).words())
        .toList();
  }

  @Test
  void the_fire_packet_says_when_detectors_are_off_for_dust_and_on_again_each_day() {
    assertThat(all(Packet.FIRE_AND_SAFETY))
        .contains(
            "Dust: detectors off Mon, Dec 7, 9:00 AM to Thu, Dec 10, 8:30 AM, on again each day,"
                + " with a fire watch.");
  }
}
