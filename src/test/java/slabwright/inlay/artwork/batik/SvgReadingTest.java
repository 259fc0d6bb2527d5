package slabwright.inlay.artwork.batik;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.artwork.batik.Svg.OPEN;
import static slabwright.inlay.artwork.batik.Svg.art;
import static slabwright.inlay.artwork.batik.Svg.page;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.words.Words;

class SvgReadingTest {
  private static List<Kind> kinds(Artwork art) {
    return art.warnings().stream().map(ArtworkWarning::kind).toList();
  }

  private static Region only(Artwork art) {
    assertThat(art.colours()).hasSize(1);
    return art.colours().get(0).region();
  }

  @Test
  void what_is_painted_has_the_width_not_the_page() {
    Artwork art = art(page("<rect x='20' y='30' width='40' height='10'/>"), 800);
    assertThat(art.painted()).isEqualTo(new Bounds(0, 0, 800, 200));
    assertThat(art.mmPerPx()).isCloseTo(20, within(1e-9));
  }

  @Test
  void a_line_without_area_does_not_count_for_the_width() {
    Artwork art =
        art(page("<path d='M0 0 L100 0 Z'/><rect x='20' y='30' width='40' height='10'/>"), 800);
    assertThat(art.painted()).isEqualTo(new Bounds(0, 0, 800, 200));
  }

  @Test
  void a_half_circle_is_one() {
    double area = only(art(page("<path d='M10 50 a40 40 0 0 1 80 0 Z'/>"), 1000)).area();
    assertThat(area).isCloseTo(Math.PI * 500 * 500 / 2, within(30.0));
  }

  /** Radius 500 mm: four plain Béziers would stray 0.14 mm, here every corner is on the circle. */
  @Test
  void a_circle_is_round_within_the_tolerance() {
    Region r = only(art(page("<circle cx='50' cy='50' r='30'/>"), 1000));
    slabwright.shape.Vec middle = r.bounds().middle();
    r.shells()
        .get(0)
        .points()
        .forEach(p -> assertThat(p.distanceTo(middle)).isCloseTo(500, within(0.011)));
  }

  /** Advance and outline of the letter I in DejaVu Sans: a bar of 202 by 1493 units of 2048. */
  @Test
  void letters_have_the_outlines_of_the_font_not_rounded_ones() {
    Region r =
        only(art(page("<text y='50' font-family='DejaVu Sans' font-size='8'>I</text>"), 202));
    assertThat(r.bounds().height()).isCloseTo(1493, within(0.05));
    assertThat(r.area()).isCloseTo(202 * 1493, within(20.0));
  }

  @Test
  void bold_letters_are_bolder() {
    String text = "<text y='50' font-size='40' font-family='DejaVu Sans' font-weight='%s'>l</text>";
    double thin = art(page(text.formatted("normal")), 100).painted().height();
    double bold = art(page(text.formatted("bold")), 100).painted().height();
    assertThat(bold).isLessThan(thin * 0.7);
  }

  @Test
  void a_missing_font_is_said_with_its_place() {
    Artwork art =
        art(
            page(
                "<rect width='100' height='10'/>"
                    + "<text x='40' y='60' font-family='Nowhere Sans' font-size='20'>Ab</text>"),
            1000);
    ArtworkWarning w = art.warnings().get(0);
    assertThat(w.kind()).isEqualTo(Kind.FONT_SUBSTITUTED);
    assertThat(w.kind().changesLetters()).isTrue();
    assertThat(Words.english().say(w.message()))
        .startsWith("font substituted")
        .contains("Nowhere Sans")
        .contains("Ab");
    assertThat(w.place().get().x()).isBetween(400.0, 700.0);
    assertThat(w.place().get().y()).isBetween(430.0, 620.0);
  }

  @Test
  void the_shipped_font_needs_no_warning() {
    String text = "<text y='50' font-family=\"'DejaVu Sans', serif\" font-size='30'>Ab</text>";
    assertThat(art(page(text), 500).warnings()).isEmpty();
  }

  @Test
  void text_that_names_no_font_is_said() {
    assertThat(kinds(art(page("<text y='50'>Ab</text>"), 500)))
        .containsExactly(Kind.FONT_SUBSTITUTED);
  }

  @Test
  void a_character_in_no_font_is_said() {
    String text = "<text y='50' font-family='DejaVu Sans'>A\u4e2d</text>";
    assertThat(kinds(art(page(text), 500))).contains(Kind.CHARACTER_MISSING);
  }

  @Test
  void a_page_filled_behind_is_background() {
    Artwork art =
        art(
            page("<rect width='100%' height='100%' fill='#eee'/><circle cx='50' cy='50' r='9'/>"),
            500);
    assertThat(art.background().get().hex()).isEqualTo("#eeeeee");
    assertThat(art.colours()).extracting(ColourRegion::hex).containsExactly("#000000");
    assertThat(art.painted().width()).isCloseTo(500, within(0.03));
    assertThat(kinds(art)).containsExactly(Kind.BACKGROUND);
  }

  @Test
  void a_page_filled_with_one_colour_alone_is_the_graphic() {
    Artwork art = art(page("<rect width='100' height='100' fill='#eee'/>"), 500);
    assertThat(art.background()).isEmpty();
    assertThat(only(art).area()).isCloseTo(250_000, within(1e-6));
  }

  @Test
  void near_colours_merge_only_when_asked() {
    String svg =
        page(
            "<rect width='50' height='50' fill='#102030'/><rect x='50' width='50' height='50' fill='#102031'/>");
    assertThat(art(svg, 500).colours()).hasSize(2);
    Artwork merged = (Artwork) Svg.read(svg, ArtworkOptions.ofWidth(500).withMergeDeltaE(2));
    assertThat(only(merged).parts()).hasSize(1);
    assertThat(kinds(merged)).containsExactly(Kind.COLOURS_MERGED);
  }

  @Test
  void an_ignored_colour_uncovers_what_it_lay_on() {
    String svg =
        page(
            "<rect width='100' height='50' fill='#102030'/><rect x='50' width='50' height='50' fill='#ff0000'/>");
    Artwork art = (Artwork) Svg.read(svg, ArtworkOptions.ofWidth(500).ignoring(Set.of("#ff0000")));
    assertThat(only(art).area()).isCloseTo(500 * 250, within(1e-6));
  }

  @Test
  void see_through_gradient_and_effect_are_said() {
    Artwork art =
        art(
            page(
                "<filter id='f'><feGaussianBlur stdDeviation='2'/></filter>"
                    + "<rect width='50' height='50' fill-opacity='.5'/><rect x='50' width='50' height='50' filter='url(#f)'/>"),
            500);
    assertThat(kinds(art)).containsExactlyInAnyOrder(Kind.SEE_THROUGH, Kind.EFFECT_LEFT_OUT);
  }

  @Test
  void an_empty_clip_hides() {
    Artwork art =
        art(
            page(
                "<clipPath id='c'/><rect width='50' height='50' clip-path='url(#c)'/><rect y='60' width='50' height='20'/>"),
            500);
    assertThat(art.painted().height()).isCloseTo(200, within(1e-6));
  }

  /**
   * The table of the SVG 2 viewport rule: references, item 11. A mark fills the viewBox 30 x 40.
   */
  @ParameterizedTest
  @CsvSource({
    "50,30,xMinYMin meet,0.75,0,0", "50,30,xMidYMid meet,0.75,13.75,0",
    "50,30,xMaxYMax meet,0.75,27.5,0", "30,60,xMinYMin meet,1,0,0",
    "30,60,xMidYMid meet,1,0,10", "30,60,xMaxYMax meet,1,0,20",
    "50,30,xMinYMin slice,1.6666667,0,0", "50,30,xMidYMid slice,1.6666667,0,-18.333333",
    "50,30,xMaxYMax slice,1.6666667,0,-36.666667", "30,60,xMinYMin slice,1.5,0,0",
    "30,60,xMidYMid slice,1.5,-7.5,0", "30,60,xMaxYMax slice,1.5,-15,0"
  })
  void a_viewBox_fits_its_viewport(
      double w, double h, String fit, double scale, double tx, double ty) {
    String inner =
        "<svg x='0' y='0' width='%s' height='%s' viewBox='0 0 30 40' preserveAspectRatio='%s'>"
            + "<rect x='2' y='2' width='26' height='36' fill='#ff0000'/></svg>";
    String frame =
        "<rect width='100' height='100' fill='#fff'/><rect width='100' height='1'/><rect width='1' height='100'/>";
    Artwork art = art(page(frame + inner.formatted(w, h, fit)), 1000);
    Bounds b =
        art.colours().stream()
            .filter(c -> c.hex().equals("#ff0000"))
            .findFirst()
            .get()
            .region()
            .bounds();
    Bounds view = new Bounds(0, 0, w * 10, h * 10);
    assertThat(b.minX()).isCloseTo(Math.max(0, (2 * scale + tx) * 10), within(0.01));
    assertThat(b.minY()).isCloseTo(Math.max(0, (2 * scale + ty) * 10), within(0.01));
    assertThat(b.maxX()).isCloseTo(Math.min(view.maxX(), (28 * scale + tx) * 10), within(0.01));
    assertThat(b.maxY()).isCloseTo(Math.min(view.maxY(), (38 * scale + ty) * 10), within(0.01));
  }

  /** CSS Values 3: references, item 11. The mark is 1 in wide; a page of 4 in. */
  @ParameterizedTest
  @CsvSource({"96px", "1in", "2.54cm", "25.4mm", "101.6Q", "6pc", "72pt", "25%"})
  void css_lengths(String length) {
    String svg = OPEN + "width='4in' height='4in'><rect width='" + length + "' height='48'/></svg>";
    Artwork art = art(svg, 1000);
    assertThat(art.painted().height()).isCloseTo(500, within(0.01));
    assertThat(art.mmPerPx()).isCloseTo(1000 / 96.0, within(1e-3));
  }

  /**
   * 1 % of a page of 4000 by 2000 is 31.62 for lengths of neither direction: references, item 11.
   */
  @Test
  void a_percentage_of_the_diagonal() {
    String svg = OPEN + "width='4000' height='2000'><circle cx='50%' cy='50%' r='1%'/></svg>";
    assertThat(art(svg, 1000).mmPerPx()).isCloseTo(1000 / (2 * 31.6228), within(0.001));
  }

  @Test
  void a_size_from_the_viewBox_alone_or_from_nothing() {
    String inside = "<rect x='-50' width='400' height='100'/></svg>";
    assertThat(art(OPEN + "viewBox='0 0 300 300'>" + inside, 600).painted().height())
        .as("cut at the page")
        .isCloseTo(200, within(1e-6));
    assertThat(art(OPEN + ">" + inside, 600).painted().height())
        .as("no page to be cut at")
        .isCloseTo(150, within(1e-6));
  }

  @Test
  void a_page_of_a_hundredth_of_a_millimetre_is_fine() {
    String svg =
        OPEN
            + "width='0.01mm' height='0.01mm' viewBox='0 0 10 10'><circle cx='5' cy='5' r='4'/></svg>";
    assertThat(only(art(svg, 1000)).area()).isCloseTo(Math.PI * 250_000, within(40.0));
  }
}
