package slabwright.sheets.packet.client;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slabwright.sheets.page.PageFrame;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.SheetContext;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

class ColourWordsTest {
  private static final SheetContext CONTEXT =
      new SheetContext(
          PageFrame.portrait(PaperSize.LETTER), UnitSystem.FEET_INCHES, Words.english());

  @Test
  void a_client_reads_names_of_colours_and_no_codes() {
    assertThat(ColourWords.named("120 openings of white (#ffffff) are small", CONTEXT))
        .isEqualTo("120 openings of white are small");
    assertThat(ColourWords.named("The colors #000000 and #ffffff differ", CONTEXT))
        .isEqualTo("The colors black and white differ");
  }
}
