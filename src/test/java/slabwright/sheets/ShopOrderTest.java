package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.drawing.Text;
import slabwright.inlay.cutfile.FilmOrder;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.PaperSize;
import slabwright.units.Message;

/** The order's page of the tram hall's heron beside the plain text in the same ZIP. */
class ShopOrderTest {
  private static String page(PaperSize paper) {
    PacketContents job = SheetSamples.tramHall().job(paper);
    return PacketSet.of(Packet.SIGN_SHOP, job).pages().get(0).drawing().plain().stream()
        .filter(Text.class::isInstance)
        .map(t -> ((Text) t).words().replace('\u00a0', ' '))
        .collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4"})
  void the_page_says_what_the_plain_text_says(PaperSize paper) {
    PacketContents job = SheetSamples.tramHall().job(paper);
    String page = page(paper);
    for (Message m :
        List.of(
            FilmOrder.film(),
            FilmOrder.colour(),
            FilmOrder.tape(),
            FilmOrder.testPiece(job.site().units()),
            FilmOrder.packing(),
            FilmOrder.files())) {
      assertThat(page).contains(job.words().say(m).replace('\u00a0', ' '));
    }
  }

  @Test
  void the_film_is_wanted_before_the_day_of_the_tack_test_and_at_no_address_that_is_not_there() {
    assertThat(page(PaperSize.LETTER))
        .contains("needed by Thu, Dec 10")
        .doesNotContain("address above");
  }
}
