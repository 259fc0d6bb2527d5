package slabwright.inlay.artwork.batik;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ColourRegion;

/**
 * Hand-made drawings, each with the areas it should show beside it. Put a new pair into the folder
 * to add a case. Areas are computed from the shapes ("computed"), or counted in a rendering some
 * 7,000 pixels wide by librsvg 2.54.7 ("counted", and "letters" where its text engine rounds).
 */
class DrawingsTest {
  /** Counting knows edges to some tenths of a pixel, which is more than 0.1 % of slender shapes. */
  private static final Map<String, Double> SHARE =
      Map.of("computed", 0.001, "counted", 0.0015, "letters", 0.003);

  private static final Path FOLDER = Path.of("src/test/resources/artwork");

  @TestFactory
  Stream<DynamicTest> shows_the_colours_and_areas_beside_it() throws IOException {
    try (Stream<Path> list = Files.list(FOLDER)) {
      return list
          .filter(p -> p.toString().endsWith(".svg"))
          .sorted()
          .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> check(p)))
          .toList()
          .stream();
    }
  }

  private static void check(Path svg) throws IOException {
    Artwork art =
        (Artwork)
            SvgArtworkReader.read(
                svg, ArtworkOptions.ofWidth(1500).withTolerance(0.005).withShippedFontsOnly());
    double square = art.mmPerPx() * art.mmPerPx();
    Map<String, Double> seen =
        art.colours().stream()
            .collect(Collectors.toMap(ColourRegion::hex, c -> c.region().area() / square));
    Map<String, String[]> expected = expected(svg);
    assertThat(seen.keySet()).isEqualTo(expected.keySet());
    expected.forEach(
        (hex, line) -> {
          double area = Double.parseDouble(line[1]);
          double share = SHARE.get(line[2]);
          assertThat(seen.get(hex)).as(hex).isCloseTo(area, within(area * share));
        });
  }

  private static Map<String, String[]> expected(Path svg) throws IOException {
    Path beside = Path.of(svg.toString().replace(".svg", ".areas"));
    Map<String, String[]> lines = new TreeMap<>();
    for (String line : Files.readAllLines(beside)) {
      if (!line.startsWith("# ")) {
        String[] words = line.split(" ", -1);
        lines.put(words[0], words);
      }
    }
    return lines;
  }
}
