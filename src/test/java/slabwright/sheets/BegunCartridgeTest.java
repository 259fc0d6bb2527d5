package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.work.handover.BuyList;

/** The filler of the tram hall's two floors on the crew's pages beside what is bought. */
class BegunCartridgeTest {
  @Test
  void no_more_cartridges_are_opened_than_are_bought() {
    PacketContents job = SheetSamples.tramHall().job(PaperSize.LETTER);
    String pages = CrewPacket.html(job).replace('\u00a0', ' ');
    Matcher first = Pattern.compile("(\\d+) cartridges of").matcher(pages);
    assertThat(first.find()).isTrue();
    Matcher rest =
        Pattern.compile("rest of the cartridge begun on [^;]*; then (\\d+) new ones")
            .matcher(pages);
    assertThat(rest.find()).isTrue();
    int bought =
        BuyList.of(job.work()).stream()
            .filter(b -> b.label().contains("filler"))
            .findFirst()
            .flatMap(b -> b.kits().maybe())
            .orElseThrow()
            .count();
    assertThat(Integer.parseInt(first.group(1)) + Integer.parseInt(rest.group(1)))
        .isEqualTo(bought);
  }
}
