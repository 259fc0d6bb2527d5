package slabwright.inlay.artwork.batik;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.shape.Region;
import slabwright.words.Words;

/**
 * Letters that go on from one element into the next. What kerns and joins over a border was
 * measured in Chromium 156 ({@code getStartPositionOfChar}, geometric precision): A before V in
 * DejaVu Sans at 100 px stands at 62.02 where it kerns and at 68.42 where it doesn't.
 */
class RunningTextTest {
  /** Kerning of A before V in DejaVu Sans at 100 px, by its own table. */
  private static final double A_V = -131 / 2048.0 * 100;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "fill='#f00'",
        "stroke='#f00' stroke-width='0.001'",
        "font-size='100'",
        "font-size='1em'",
        "font-weight='400'",
        "letter-spacing='0'",
        "dx='0'",
        "dy='0'",
        "dy='5'",
        "rotate='0'",
        "text-anchor='end'",
        "fill-opacity='0.999'",
      })
  void letters_kern_over_the_border_of_elements_in_one_font(String how) throws IOException {
    double kerned = width(text("A<tspan " + how + ">V</tspan>A"));
    double apart = width(text("<tspan style='font-kerning:none'>AVA</tspan>"));
    assertThat(kerned - apart).isCloseTo(2 * A_V, within(0.05));
    assertThat(kerned).isCloseTo(width(text("AVA")), within(0.05));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "letter-spacing='0.001'",
        "word-spacing='3'",
        "style='font-kerning:none'",
        "y='0'",
        "font-size='100.001'",
        "unicode-bidi='embed'",
      })
  void they_do_not_where_a_browser_shapes_anew(String how) throws IOException {
    double apart = width(text("<tspan style='font-kerning:none'>AVA</tspan>"));
    double own = how.startsWith("y=") ? A_V : 0;
    assertThat(width(text("A<tspan " + how + ">V</tspan>A"))).isCloseTo(apart + own, within(0.05));
  }

  @Test
  void kerning_goes_over_borders_within_borders_and_over_links() throws IOException {
    double whole = width(text("AVAV"));
    assertThat(width(text("A<tspan>V<tspan>A</tspan></tspan><a>V</a>")))
        .isCloseTo(whole, within(0.05));
    assertThat(width(text("A<tspan></tspan>V<tspan display='none'>x</tspan>AV")))
        .isCloseTo(whole, within(0.05));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "of<tspan>f</tspan>ice",
        "o<tspan>ff</tspan>ice",
        "off<tspan>i</tspan>ce",
        "of<tspan>fi</tspan>ce",
        "<tspan>of</tspan><tspan>fice</tspan>",
      })
  void letters_join_over_the_border_of_elements_in_one_paint(String divided) throws IOException {
    Artwork art = read(text(divided));
    assertThat(art.warnings()).noneMatch(w -> w.kind().changesLetters());
    assertThat(unlike(region(art), region(read(text("office"))))).isLessThan(1e-3);
  }

  /** A browser paints all of the joined letter as its first; others don't. */
  @ParameterizedTest
  @CsvSource({
    "of<tspan fill='#f00'>f</tspan>ice, f",
    "off<tspan fill='#f00'>i</tspan>ce, i",
    "of<tspan stroke='#f00'>fice</tspan>, fice"
  })
  void a_joined_letter_in_two_paints_asks_for_paths(String divided, String later)
      throws IOException {
    assertThat(said(read(text(divided))))
        .anyMatch(
            s ->
                s.startsWith("the text \"" + later + "\" begins within letters that its font joins")
                    && s.endsWith("turn the text into paths."));
  }

  @Test
  void other_letters_may_change_their_paint_beside_a_joined_one() throws IOException {
    Artwork art = read(text("<tspan fill='#f00'>o</tspan>ffi<tspan fill='#00f'>ce</tspan>"));
    assertThat(said(art)).isEmpty();
    assertThat(art.colours()).hasSize(3);
    Region all = Region.union(art.colours().stream().map(ColourRegion::region).toList());
    assertThat(unlike(all, region(read(text("office"))))).isLessThan(1e-3);
  }

  @ParameterizedTest
  @ValueSource(strings = {"x='0 40 80 120 160 200'", "y='0 0 0 0 0 0'", "y='0 0 0 0'"})
  void letters_with_places_of_their_own_neither_kern_nor_join(String places) throws IOException {
    Artwork placed = read(text("<tspan " + places + ">office</tspan>"));
    assertThat(said(placed)).isEmpty();
    String plain = "font-kerning:none;font-variant-ligatures:none";
    Artwork apart = read(text("<tspan " + places + " style='" + plain + "'>office</tspan>"));
    assertThat(unlike(region(placed), region(apart))).isLessThan(1e-3);
  }

  @Test
  void an_accent_in_an_element_of_its_own_is_set_over_its_letter_or_asks_for_paths()
      throws IOException {
    Artwork composed = read(text("e<tspan>\u0301</tspan>"));
    assertThat(unlike(region(composed), region(read(text("\u00e9"))))).isLessThan(1e-3);
    assertThat(said(composed)).isEmpty();
    assertThat(said(read(text("H\u0e01\u0e33<tspan>\u0301</tspan>")))).isNotEmpty();
  }

  private static List<String> said(Artwork art) {
    return art.warnings().stream()
        .filter(w -> w.kind() == ArtworkWarning.Kind.TEXT_SET_OTHERWISE)
        .map(w -> Words.english().say(w.message()))
        .toList();
  }

  /** The share of one that the other doesn't have. */
  private static double unlike(Region a, Region b) {
    return (a.minus(b).area() + b.minus(a).area()) / a.area();
  }

  private static Region region(Artwork art) {
    return art.colours().get(0).region();
  }

  private static double width(String body) throws IOException {
    Artwork art = read(body);
    return art.painted().width() / art.mmPerPx();
  }

  private static String text(String letters) {
    return "<text font-family='DejaVu Sans' font-size='100'>" + letters + "</text>";
  }

  private static Artwork read(String body) throws IOException {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='-100 -400 1000 800'>" + body + "</svg>";
    return (Artwork)
        SvgArtworkReader.read(
            new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)),
            "drawing",
            ArtworkOptions.ofWidth(1000).withShippedFontsOnly());
  }
}
