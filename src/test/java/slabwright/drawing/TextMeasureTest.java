package slabwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;

class TextMeasureTest {
  private static final TextStyle STYLE = TextStyle.plain(4);

  /** The widths are those in the font's hmtx table: figures 1303, space 651 of 2048 units. */
  @Test
  void widths_are_those_of_the_font_file() {
    assertThat(TextMeasure.width("0", STYLE)).isCloseTo(4 * 1303 / 2048.0, within(1e-5));
    assertThat(TextMeasure.width("12 34", STYLE))
        .isCloseTo(4 * (4 * 1303 + 651) / 2048.0, within(1e-4));
    assertThat(TextMeasure.CAP_HEIGHT).isCloseTo(1493 / 2048.0, within(1e-9));
  }

  @Test
  void what_the_font_lacks_shows_as_an_open_square_and_controls_as_spaces() {
    assertThat(TextMeasure.showable("24′ 6″ ½ m² ✓ · …")).isEqualTo("24′ 6″ ½ m² ✓ · …");
    assertThat(TextMeasure.showable("a\tb\u0007c漢")).isEqualTo("a b c□");
  }

  @Test
  void wrapping_breaks_at_spaces_and_keeps_given_line_ends() {
    assertThat(TextMeasure.wrap("one two three\nfour", STYLE, TextMeasure.width("one two", STYLE)))
        .containsExactly("one two", "three", "four");
  }

  @Test
  void no_line_ends_inside_a_number_or_between_a_number_and_its_unit() {
    double narrow = TextMeasure.width("very wide 2′ 9", STYLE);
    assertThat(TextMeasure.wrap("very wide 2′ 9 3/16″", STYLE, narrow))
        .containsExactly("very wide", "2′ 9 3/16″");
    assertThat(TextMeasure.wrap("area 1,635 sq ft", STYLE, TextMeasure.width("area 1,635", STYLE)))
        .containsExactly("area", "1,635 sq ft");
  }

  @Property(tries = 200)
  void no_wrapped_line_is_too_wide_and_no_letter_is_lost(
      @ForAll @StringLength(max = 80) String words,
      @ForAll @DoubleRange(min = 8, max = 60) double width) {
    List<String> lines = TextMeasure.wrap(words, STYLE, width);
    assertThat(lines).allMatch(l -> l.length() <= 2 || TextMeasure.width(l, STYLE) <= width + 1e-6);
    String shown = TextMeasure.showable(words.replace("\n", " ")).replace(" ", "");
    assertThat(String.join("", lines).replace(" ", "")).isEqualTo(shown);
  }

  @Test
  void a_shortened_line_fits_and_says_that_it_is_short() {
    String fitted = TextMeasure.fitted("a rather long name", STYLE, 20);
    assertThat(fitted).endsWith("…");
    assertThat(TextMeasure.width(fitted, STYLE)).isLessThanOrEqualTo(20);
  }

  @Test
  void a_shortened_step_keeps_the_number_of_its_coat() {
    String fitted = TextMeasure.fittedBeforeComma("a rather long name, coat 2", STYLE, 25);
    assertThat(fitted).endsWith("…, coat 2");
    assertThat(TextMeasure.width(fitted, STYLE)).isLessThanOrEqualTo(25);
  }

  @Test
  void boxes_side_by_side_do_not_overlap_and_boxes_on_each_other_do() {
    TextBox a = TextBox.of(Text.start(new Vec(0, 0), "floor", STYLE));
    TextBox beside = TextBox.of(Text.start(new Vec(a.bounds().maxX() + 0.02, 0), "b", STYLE));
    TextBox across = TextBox.of(Text.centred(new Vec(2, 0), "turned", STYLE, 40));
    assertThat(a.overlaps(beside)).isFalse();
    assertThat(a.overlaps(across)).isTrue();
  }
}
