package slabwright.inlay.artwork.batik;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.artwork.batik.Svg.art;
import static slabwright.inlay.artwork.batik.Svg.page;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.inlay.artwork.ColourRegion;

/** Values that SVG 2 and CSS know and SVG 1.1 does not, and values that nobody knows. */
class ModernValuesTest {
  /** A bar across the page, so that what is painted is 100 px and 1000 mm wide. */
  private static final String BAR = "<rect width='100' height='10' fill='#0000ff'/>";

  private static Artwork read(String inside) {
    return art(page(BAR + inside), 1000);
  }

  /** Area of a colour in px²; 0 when it is not seen. */
  private static double area(Artwork art, String hex) {
    return art.colours().stream()
        .filter(c -> c.hex().equals(hex))
        .mapToDouble((ColourRegion c) -> c.region().area() / 100)
        .sum();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<path d='M20 30H80' stroke='red' stroke-width='4' stroke-dasharray='5 -3'/>",
        "<path d='M20 30H80' style='stroke:red;stroke-width:4;stroke-dasharray:-5'/>",
        "<style>.d{stroke-dasharray:5,-3}</style>"
            + "<path class='d' d='M20 30H80' stroke='red' stroke-width='4'/>"
      })
  void a_negative_dash_is_left_out_with_a_note_as_css_does(String path) {
    Artwork art = read(path);
    assertThat(area(art, "#ff0000")).isCloseTo(240, within(0.1));
    assertThat(art.warnings()).hasSize(1);
  }

  @Test
  void a_negative_stroke_width_is_left_out_as_css_does() {
    Artwork art = read("<path d='M20 30H80' stroke='red' stroke-width='-4'/>");
    assertThat(area(art, "#ff0000")).isCloseTo(60, within(0.1));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "oklch(60% 0.2 30)",
        "color(display-p3 1 0 0)",
        "context-fill",
        "nonsense",
        "#12345",
        "url(#none) lab(50% 40 30)"
      })
  void a_paint_that_is_not_understood_is_said_and_not_painted_black(String paint) {
    for (String how : new String[] {"fill='%s'", "style='fill:%s'"}) {
      Artwork art = read("<rect y='20' width='50' height='50' " + how.formatted(paint) + "/>");
      assertThat(art.colours()).hasSize(1);
      assertThat(art.warnings()).anyMatch(w -> w.kind() == ArtworkWarning.Kind.PART_LEFT_OUT);
    }
  }

  @Test
  void a_paint_that_is_not_understood_in_a_rule_is_not_painted_black_either() {
    Artwork art =
        read(
            "<style>.a{fill:oklch(60% 0.2 30)}</style><rect class='a' y='20' width='9' height='9'/>");
    assertThat(art.colours()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({"initial, #000000", "unset, #00ff00", "revert, #00ff00", "'', #00ff00"})
  void the_words_for_nothing_said_are_understood(String paint, String hex) {
    Artwork art =
        read("<g fill='#00ff00'><rect y='20' width='50' height='50' fill='" + paint + "'/></g>");
    assertThat(area(art, hex)).isCloseTo(2500, within(0.1));
    assertThat(art.warnings()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "<rect x='calc(10px + 10px)' y='20' width='calc(50% - 10px)' height='calc(2*25px)' fill='red'/>, 2000",
    "<rect x='20' y='20' width='calc((1in - 76px) / 2)' height='50' fill='red'/>, 500",
    "<path d='M20 30H80' stroke='red' style='stroke-width:calc(2px * 3)'/>, 360",
    "<circle cx='50' cy='50' fill='red' style='r:calc(25% - 5px)'/>, 1256.6"
  })
  void sums_are_worked_out(String shape, double px2) {
    Artwork art = read(shape);
    assertThat(area(art, "#ff0000")).isCloseTo(px2, within(0.5));
    assertThat(art.warnings()).isEmpty();
  }

  @Test
  void a_sum_that_cannot_be_worked_out_is_left_out_with_a_note() {
    Artwork art = read("<rect y='20' width='30' height='30' x='calc(1em + 5)' fill='red'/>");
    assertThat(area(art, "#ff0000")).isCloseTo(900, within(0.1));
    assertThat(art.warnings()).hasSize(1);
  }

  /** SVG 2, 10.2 to 10.4; π · 20² and a square of 50 less its corners of radius 10 and 5 by 10. */
  @ParameterizedTest
  @CsvSource({
    "<ellipse cx='50' cy='50' rx='20' fill='red'/>, 1256.64",
    "<ellipse cx='50' cy='50' rx='auto' ry='20' fill='red'/>, 1256.64",
    "<ellipse cx='50' cy='50' fill='red'/>, 0",
    "<rect y='20' width='50' height='50' rx='auto' ry='10' fill='red'/>, 2414.16",
    "<rect y='20' width='50' height='50' style='rx:10px;ry:auto' fill='red'/>, 2414.16",
    "<rect y='20' width='50' height='50' rx='-5' fill='red'/>, 2500",
    "<rect y='20' height='50' fill='red'/>, 0",
    "<circle cx='50' cy='50' r='-4' fill='red'/>, 0"
  })
  void radii_and_sizes_that_are_not_set_are_as_svg_2_has_them(String shape, double px2) {
    assertThat(area(read(shape), "#ff0000")).isCloseTo(px2, within(0.3));
  }

  @ParameterizedTest
  @ValueSource(strings = {"mask-type='alpha'", "style='mask-type:alpha'", "class='a'"})
  void an_alpha_mask_shows_what_it_covers_whatever_its_colour(String how) {
    Artwork art =
        read(
            "<style>.a{mask-type:alpha}</style><mask id='m' maskUnits='userSpaceOnUse' x='0' y='0'"
                + " width='100' height='100' "
                + how
                + "><rect x='30' y='30' width='20' height='20' fill='black'/></mask>"
                + "<rect y='20' width='50' height='50' fill='red' mask='url(#m)'/>");
    assertThat(area(art, "#ff0000")).isCloseTo(400, within(0.1));
  }

  @Test
  void a_mask_by_brightness_is_not_taken_for_an_alpha_mask() {
    Artwork art =
        read(
            "<mask id='m'><rect width='100' height='100' fill='black'/></mask>"
                + "<rect y='20' width='50' height='50' fill='red' mask='url(#m)'/>");
    assertThat(area(art, "#ff0000")).isZero();
  }
}
