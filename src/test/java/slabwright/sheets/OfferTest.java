package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slabwright.drawing.TextBox;
import slabwright.floor.Floors;
import slabwright.project.AreaCache;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.site.Site;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.AreaResult;
import slabwright.work.AreaTakeoff;
import slabwright.work.WorkPlan;
import slabwright.work.book.BookSamples;

/** What a client signs: all that is done stands above the line, or there is no line. */
class OfferTest {
  private static String words(List<PrintedPage> pages) {
    return pages.stream()
        .flatMap(p -> TextBox.of(p.drawing()).stream())
        .map(TextBox::words)
        .collect(Collectors.joining(" "));
  }

  @Test
  void what_makes_the_floor_ready_stands_in_the_offer_by_the_names_that_the_client_knows() {
    String words = words(SheetSamples.tramHall().packet(Packet.CLIENT, PaperSize.LETTER).pages());
    assertThat(words)
        .containsSubsequence(
            "We do",
            "Drain trench ground flush with the floor",
            "old carpet glue taken off",
            "joints, cracks and chips filled",
            "ground until fine sand shows",
            "We don't do");
  }

  @Test
  void a_floor_for_which_no_work_is_chosen_has_no_price_and_no_line_to_sign() throws IOException {
    Site bare =
        Site.empty("Bakery (invented)", UnitSystem.METRIC)
            .withAreas(List.of(Floors.rectangle(9_000, 6_000)));
    List<AreaResult> results = new AreaCache().of(bare, Path.of("."), () -> false);
    List<AreaTakeoff> floors =
        results.stream().map(r -> AreaTakeoff.of(r.takeoff(), List.of())).toList();
    WorkPlan work = WorkPlan.of(bare, floors, BookSamples.book());
    PacketContents job =
        new PacketContents(bare, results, work, PaperSize.A4, SheetSamples.DAY, Words.english());
    String words = words(PacketSet.of(Packet.CLIENT, job).pages());
    assertThat(words).contains("This is no offer yet", "No work is chosen for this floor yet");
    assertThat(words).doesNotContain("USD", "signature", "we order the work");
  }

  @Test
  void the_spanish_offer_has_price_and_every_line_to_sign_on_one_page_of_letter() {
    Words spanish = Words.of(Locale.forLanguageTag("es"));
    String title = spanish.say("sheets.offer-page.title");
    assertThat(SheetSamples.tramHall().packet(Packet.CLIENT, PaperSize.LETTER, spanish).pages())
        .filteredOn(p -> p.title().startsWith(title))
        .hasSize(1);
  }
}
