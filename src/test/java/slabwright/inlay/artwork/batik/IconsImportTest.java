package slabwright.inlay.artwork.batik;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.ArtworkResult;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.words.Words;

/** Real drawings in bulk. The long run checks the area of every one. */
class IconsImportTest {
  private static final int EVERY = 40;
  private static final double WIDTH_MM = 1000;

  @Test
  void every_fourth_icon_is_read() throws IOException {
    assertRead(4);
  }

  @Test
  @Tag("long")
  void every_icon_is_read() throws IOException {
    assertRead(1);
  }

  private static void assertRead(int every) throws IOException {
    List<String> failures = new ArrayList<>();
    int i = 0;
    for (Map.Entry<String, byte[]> icon : Icons.all().entrySet()) {
      if (i++ % every == 0 && read(icon) instanceof ArtworkRefusal r) {
        failures.add(Words.english().say(r.message()));
      }
    }
    assertThat(i).isGreaterThan(2000);
    assertThat(failures).isEmpty();
  }

  @Test
  void areas_of_every_fortieth_agree_with_counted_pixels() throws IOException {
    checkAreas(EVERY);
  }

  @Test
  @Tag("long")
  void areas_of_all_agree_with_counted_pixels() throws IOException {
    checkAreas(1);
  }

  private static void checkAreas(int every) throws IOException {
    List<String> wrong = new ArrayList<>();
    double worst = 0;
    int i = 0;
    int checked = 0;
    for (Map.Entry<String, byte[]> icon : Icons.all().entrySet()) {
      if (i++ % every == 0) {
        double miss = miss(icon, wrong);
        worst = Math.max(worst, miss);
        checked++;
      }
    }
    System.out.printf(
        Locale.ROOT, "icon areas: %d checked, worst miss %.4f %%%n", checked, worst * 100);
    assertThat(wrong).isEmpty();
  }

  /** The relative miss; adds a line to {@code wrong} when it is beyond 0.1 % and the bound. */
  private static double miss(Map.Entry<String, byte[]> icon, List<String> wrong)
      throws IOException {
    Artwork art = (Artwork) read(icon);
    double scale = art.mmPerPx() * art.mmPerPx();
    double ours = art.colours().stream().mapToDouble(c -> c.region().area()).sum() / scale;
    double edge =
        art.colours().stream().mapToDouble(c -> c.region().boundaryLength()).sum() / art.mmPerPx();
    if (art.warnings().stream().anyMatch(w -> w.kind() == ArtworkWarning.Kind.SEE_THROUGH)) {
      // a see-through shape counts as painted here, but only in part in the image
      return 0;
    }
    RasterCoverage raster = RasterCoverage.of(icon.getValue(), 16, 16, 2048);
    double theirs = raster.area();
    double miss = Math.abs(ours - theirs);
    double bound = raster.bound(edge) + (drawsTwice(icon.getValue()) ? raster.bandOf(edge) : 0);
    if (miss > Math.max(theirs * 0.001, bound)) {
      wrong.add("%s: %.5f against %.5f".formatted(icon.getKey(), ours, theirs));
    }
    return miss / theirs;
  }

  /** Whether one outline is painted twice, which covers the pixels on its edge twice over. */
  private static boolean drawsTwice(byte[] svg) {
    List<String> outlines =
        Pattern.compile(" d=\"([^\"]*)\"")
            .matcher(new String(svg, StandardCharsets.UTF_8))
            .results()
            .map(m -> m.group(1))
            .toList();
    return outlines.stream().distinct().count() < outlines.size();
  }

  private static ArtworkResult read(Map.Entry<String, byte[]> icon) throws IOException {
    return SvgArtworkReader.read(
        new ByteArrayInputStream(icon.getValue()), icon.getKey(), ArtworkOptions.ofWidth(WIDTH_MM));
  }
}
