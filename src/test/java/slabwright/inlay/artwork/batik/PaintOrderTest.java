package slabwright.inlay.artwork.batik;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.inlay.artwork.Artwork;
import slabwright.words.Words;

/**
 * A blue square of 40 with a red stroke of 10, 50 over all: painted last the stroke takes 5 of the
 * fill at each side, painted first the fill is whole. SVG 2, painting (from memory).
 */
class PaintOrderTest {
  private static Artwork square(String before, String attributes) {
    String rect =
        "<rect x='30' y='30' width='40' height='40' fill='#203080' stroke='#a02020'"
            + " stroke-width='10' "
            + attributes
            + "/>";
    return Svg.art(Svg.page(before + rect), 50);
  }

  private static double area(Artwork art, String hex) {
    return art.colours().stream()
        .filter(c -> c.hex().equals(hex))
        .mapToDouble(c -> c.region().area())
        .sum();
  }

  private static void isBlue(Artwork art, double blue) {
    assertThat(area(art, "#203080")).isCloseTo(blue, within(0.5));
    assertThat(area(art, "#a02020")).isCloseTo(2_500 - blue, within(0.5));
  }

  @Test
  void a_stroke_lies_over_its_fill() {
    isBlue(square("", ""), 900);
    isBlue(square("", "paint-order='fill stroke'"), 900);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "paint-order='stroke'",
        "style='paint-order:stroke'",
        "style='PAINT-ORDER: stroke fill markers'",
        "paint-order='markers stroke'",
        "style='paint-order: Stroke'",
        "class='under'"
      })
  void where_it_is_asked_first_the_fill_lies_over_it(String attributes) {
    isBlue(square("<style>.under{paint-order:stroke}</style>", attributes), 1_600);
  }

  /** A clip is what its shapes fill. */
  @Test
  void what_clips_clips_as_before() {
    String clip =
        "<clipPath id='c'><rect x='10' y='10' width='20' height='20' paint-order='stroke'/>"
            + "</clipPath>";
    String body = clip + "<path d='M0 0H50V50H0z' fill='#203080' clip-path='url(#c)'/>";
    assertThat(area(Svg.art(Svg.page(body), 20), "#203080")).isCloseTo(400, within(0.5));
  }

  @Test
  void a_group_or_a_page_that_asks_it_is_said_to_be_drawn_as_usual() {
    String path = "<path d='M0 0H50V50H0z'/>";
    isSaid(Svg.page("<g paint-order='stroke'>" + path + "</g>"));
    isSaid(Svg.OPEN + "width='50' height='50' style='paint-order:stroke'>" + path + "</svg>");
  }

  private static void isSaid(String svg) {
    assertThat(Svg.art(svg, 50).warnings())
        .extracting(w -> Words.english().say(w.message()))
        .anyMatch(s -> s.contains("paint order"));
  }
}
