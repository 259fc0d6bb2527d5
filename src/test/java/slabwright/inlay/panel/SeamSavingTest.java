package slabwright.inlay.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.batik.SvgArtworkReader;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.StencilParameters;
import slabwright.inlay.stencil.StencilSet;

/** Real drawings (Bootstrap Icons 1.13.1, MIT) as three-metre stencils, and the sample emblem. */
class SeamSavingTest {
  private static final String FOLDER = "/META-INF/resources/webjars/bootstrap-icons/1.13.1/icons/";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bicycle",
        "tree",
        "flower1",
        "cup-hot",
        "lightbulb",
        "gear",
        "book",
        "compass",
        "tools",
        "building"
      })
  void chosen_seams_cost_no_more_than_evenly_spaced_ones(String icon) throws IOException {
    try (InputStream svg = SeamSavingTest.class.getResourceAsStream(FOLDER + icon + ".svg")) {
      compare(icon, stencils(svg, icon, 3000));
    }
  }

  @Test
  void the_sample_plan_is_no_exception() throws IOException {
    try (InputStream svg = Files.newInputStream(Path.of("sample-plans/heron-ring.svg"))) {
      compare("heron ring", stencils(svg, "heron-ring", 94.5 * 25.4));
    }
  }

  private static void compare(String name, StencilSet stencils) {
    SeamPlanner planner = new SeamPlanner(stencils, PanelParameters.usual());
    SeamCost best = planner.best().cost();
    System.out.printf("seams: %s, chosen in %.0f ms%n", name, quickest(stencils));
    for (StripDirection turn : StripDirection.values()) {
      SeamCost even = planner.even(turn).cost();
      System.out.printf("  %-6s evenly %s, chosen %s%n", turn, words(even), words(best));
      assertThat(best.total()).isLessThanOrEqualTo(even.total() + 1e-9);
    }
  }

  private static String words(SeamCost cost) {
    return "%.0f (edge %.0f mm, %d cut)".formatted(cost.total(), cost.edge(), cost.looseCut());
  }

  /** The time of one plan in ms once the machine has warmed up: said, never judged. */
  private static double quickest(StencilSet stencils) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 3; i++) {
      long start = System.nanoTime();
      PanelPlan plan = new SeamPlanner(stencils, PanelParameters.usual()).best();
      long took = System.nanoTime() - start;
      assertThat(plan.panels()).isNotEmpty();
      least = Math.min(least, took / 1e6);
    }
    return least;
  }

  private static StencilSet stencils(InputStream svg, String name, double width)
      throws IOException {
    Artwork art = (Artwork) SvgArtworkReader.read(svg, name, ArtworkOptions.ofWidth(width));
    List<DyeLayer> layers =
        art.colours().stream().map(c -> new DyeLayer(c.hex(), c.lightness(), c.region())).toList();
    return StencilSet.of(layers, StencilParameters.usual());
  }
}
