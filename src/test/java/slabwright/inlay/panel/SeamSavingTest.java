package slabwright.inlay.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.StencilRules;
import slabwright.inlay.stencil.StencilSet;

/** Real drawings (Bootstrap Icons 1.13.1, MIT) as three-metre stencils. */
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
    SeamPlanner planner = new SeamPlanner(stencils(icon), PanelRules.usual());
    SeamCost best = planner.best().cost();
    for (Turn turn : Turn.values()) {
      SeamCost even = planner.even(turn).cost();
      System.out.printf(
          "%-9s %-6s evenly %6.0f (edge %5.0f mm, %d cut) chosen %6.0f (edge %5.0f mm, %d cut)%n",
          icon,
          turn,
          even.total(),
          even.edge(),
          even.looseCut(),
          best.total(),
          best.edge(),
          best.looseCut());
      assertThat(best.total()).isLessThanOrEqualTo(even.total() + 1e-9);
    }
  }

  private static StencilSet stencils(String icon) throws IOException {
    try (InputStream svg = SeamSavingTest.class.getResourceAsStream(FOLDER + icon + ".svg")) {
      Artwork art = (Artwork) Artwork.read(svg, icon, ArtworkOptions.ofWidth(3000));
      List<DyeLayer> layers =
          art.colours().stream()
              .map(c -> new DyeLayer(c.hex(), c.lightness(), c.region()))
              .toList();
      return StencilSet.of(layers, StencilRules.usual());
    }
  }
}
