package slabwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PaletteTest {
  /** WCAG 2.1: black on white is 21; 4.5 is the least for words (success criterion 1.4.3). */
  @Test
  void every_printing_colour_reads_on_white_and_on_its_own_tint() {
    assertThat(Colour.hex("000000").contrast(Palette.WHITE)).isCloseTo(21, within(1e-9));
    for (Colour c : Palette.PRINT) {
      assertThat(c.contrast(Palette.WHITE)).as(c.css()).isGreaterThan(4.5);
      assertThat(c.contrast(Palette.tint(c))).as(c.css()).isGreaterThan(4.0);
    }
  }

  /** Darkened, not changed: each stays nearest in hue to a colour of the published set. */
  @Test
  void each_signal_colour_keeps_the_hue_of_a_published_one() {
    List<Double> hues = new ArrayList<>();
    Palette.OKABE_ITO.subList(0, 7).forEach(c -> hues.add(hue(c)));
    List<Colour> ours =
        List.of(
            Palette.AMBER, Palette.GREEN, Palette.BLUE, Palette.RED, Palette.TEAL, Palette.OLIVE);
    for (Colour c : ours) {
      assertThat(hues).as(c.css()).anyMatch(h -> Math.abs(h - hue(c)) < 25);
    }
  }

  @Test
  void a_colour_reads_back_from_its_css_form() {
    assertThat(Colour.hex("b03a26").css()).isEqualTo("#b03a26");
  }

  private static double hue(Colour c) {
    float[] hsb = java.awt.Color.RGBtoHSB(c.red(), c.green(), c.blue(), null);
    return hsb[0] * 360;
  }
}
