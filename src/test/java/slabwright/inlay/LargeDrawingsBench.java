package slabwright.inlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.batik.SvgArtworkReader;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.site.StencilSpec;
import slabwright.units.Length;

/**
 * CPU time of reading a crest and of planning a coast as they double. Runs only when asked: {@code
 * -Dslabwright.bench=true}.
 */
@EnabledIfSystemProperty(named = "slabwright.bench", matches = "true")
class LargeDrawingsBench {
  @TempDir Path folder;

  @Test
  void crests_are_read() throws Exception {
    for (int bytes : new int[] {25_500, 51_000, 102_000}) {
      Path svg = folder.resolve(bytes + ".svg");
      Files.writeString(svg, LargeDrawings.crest(bytes));
      long start = cpu();
      Artwork art = (Artwork) SvgArtworkReader.read(svg, ArtworkOptions.ofWidth(2400));
      print("crest of " + bytes + " bytes", start);
      assertThat(art.colours()).hasSize(4);
    }
  }

  @Test
  void coasts_are_planned() {
    for (int segments : new int[] {18_500, 37_000, 74_000}) {
      Region land = Region.of(LargeDrawings.coast(segments, 5000), FillRule.NONZERO);
      DyedGraphic graphic =
          new DyedGraphic(land.bounds(), List.of(new DyeLayer("sea green", 50, land)), List.of());
      long start = cpu();
      InlayPlan plan =
          InlayPlan.of(
              graphic, StencilSpec.forRoll(Length.mm(1219.2)), InlayContext.graphicAlone());
      print("coast of " + segments + " segments", start);
      assertThat(plan.pressBandArea()).isPositive();
    }
  }

  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static void print(String what, long start) {
    System.out.printf("%s: %.1f s%n", what, (cpu() - start) / 1e9);
  }
}
