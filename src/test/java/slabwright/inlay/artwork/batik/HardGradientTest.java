package slabwright.inlay.artwork.batik;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ColourRegion;

/** A gradient whose colours change at once keeps them; the shape is 100 by 200 px. */
class HardGradientTest {
  private static final String TWO =
      "<stop offset='.25' stop-color='red'/><stop offset='.25' stop-color='blue'/>";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "linearGradient||" + TWO + "| {#ff0000=5000, #0000ff=15000}",
        // from top to bottom
        "linearGradient|x2='0' y2='1'|" + TWO + "| {#ff0000=5000, #0000ff=15000}",
        // across the corner of the square that the shape's box stands for: half a quarter's square
        "linearGradient|x2='1' y2='1'|" + TWO + "| {#ff0000=2500, #0000ff=17500}",
        "linearGradient|gradientUnits='userSpaceOnUse' x1='0' x2='200'|"
            + TWO
            + "| {#ff0000=10000, #0000ff=10000}",
        "linearGradient|gradientTransform='translate(.5 0)'|"
            + TWO
            + "| {#ff0000=15000, #0000ff=5000}",
        "linearGradient|| <stop stop-color='red'/><stop offset='1' stop-color='red'/>"
            + "| {#ff0000=20000}",
        // three bands, of two colours
        "linearGradient||<stop offset='.3' stop-color='red'/><stop offset='.3' stop-color='blue'/>"
            + "<stop offset='.6' stop-color='blue'/><stop offset='.6' stop-color='red'/>"
            + "| {#ff0000=14000, #0000ff=6000}",
        // a disc of radius 20 px
        "radialGradient|gradientUnits='userSpaceOnUse' cx='50' cy='100' r='80'|"
            + TWO
            + "| {#ff0000=1257, #0000ff=18743}",
      })
  void bands_with_hard_edges_keep_their_colours(String kind, String how, String stops, String areas)
      throws IOException {
    Artwork art = read(kind, how == null ? "" : how, stops);
    double mm = art.mmPerPx();
    Map<String, Long> found = new LinkedHashMap<>();
    for (ColourRegion c : art.colours()) {
      found.put(c.hex(), Math.round(c.region().area() / (mm * mm)));
    }
    assertThat(found).hasToString(areas.strip());
    assertThat(art.questions()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"spreadMethod='repeat'", "spreadMethod='reflect'"})
  void a_repeated_one_is_still_one_colour_and_asked_about(String how) throws IOException {
    assertThat(read("linearGradient", how, TWO).questions()).hasSize(1);
  }

  private static Artwork read(String kind, String how, String stops) throws IOException {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg'><"
            + kind
            + " id='g' "
            + how
            + ">"
            + stops
            + "</"
            + kind
            + "><rect width='100' height='200' fill='url(#g)'/></svg>";
    return (Artwork)
        SvgArtworkReader.read(
            new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)),
            "drawing",
            ArtworkOptions.ofWidth(1000));
  }
}
