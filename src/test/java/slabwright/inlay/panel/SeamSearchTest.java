package slabwright.inlay.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import slabwright.inlay.Graphics;
import slabwright.inlay.RandomGraphic;
import slabwright.inlay.stencil.StencilSet;

class SeamSearchTest {
  private static final double OVERLAP = 12;
  private static final double USABLE = 420;
  private static final double HALF_GRID = 5e-4;
  private static final SeamWeights WEIGHTS = new SeamWeights(15, 1, 130, 70, 12, 0.25);
  private static final PanelParameters RULES =
      PanelParameters.usual()
          .withRoll(Roll.ofWidth(444).withUsableWidth(USABLE))
          .withOverlap(OVERLAP)
          .withPitch(120)
          .withWeights(WEIGHTS);

  @Property(tries = 3, shrinking = ShrinkingMode.OFF)
  void the_best_seams_cost_what_trying_all_of_them_finds(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    assertBestOfAll(seed);
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200, shrinking = ShrinkingMode.OFF)
  void the_best_seams_cost_what_trying_all_of_them_finds_of_200(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    the_best_seams_cost_what_trying_all_of_them_finds(seed);
  }

  /**
   * Its last panel is the blank's width less a seam's place: 420 mm but for the last binary digit.
   */
  @Test
  void a_panel_as_wide_as_the_roll_allows_is_among_those_tried() {
    assertBestOfAll(17);
  }

  /** A seam at 360 leaves 0.012 mm of one loose piece on its other side. */
  @Test
  void a_loose_piece_of_which_a_seam_takes_the_last_tip_counts_as_cut() {
    assertBestOfAll(49);
  }

  private static void assertBestOfAll(long seed) {
    StencilSet set = Graphics.one(new RandomGraphic(seed, 900).region());
    PanelPlan best = new SeamPlanner(set, RULES).best(StripDirection.DOWN);
    assertThat(best.cost().total()).isCloseTo(cheapestOfAll(set), within(0.5));
  }

  @Property(tries = 200, shrinking = ShrinkingMode.OFF)
  void seams_moved_by_hand_never_cost_less(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    StencilSet set = Graphics.one(new RandomGraphic(seed, 900).region());
    SeamPlanner planner = new SeamPlanner(set, RULES);
    PanelPlan best = planner.best(StripDirection.DOWN);
    PanelPlan even = planner.even(StripDirection.DOWN);
    assertThat(planner.costOf(StripDirection.DOWN, best.seams()).total())
        .isEqualTo(best.cost().total());
    assertThat(best.cost().total()).isLessThanOrEqualTo(even.cost().total() + 1e-9);
  }

  /** Every choice of places that makes legal panels, one after the other. */
  private static double cheapestOfAll(StencilSet set) {
    double width = set.blank().width();
    double[] places =
        new SeamCandidates(width, USABLE, OVERLAP)
            .everyStep(RULES.pitch())
            .inGaps(SeamCostFunction.of(set, StripDirection.DOWN).gaps(width), WEIGHTS.near())
            .sorted();
    PlainSeamCost plain = new PlainSeamCost(set, OVERLAP, WEIGHTS);
    double[] costs = Arrays.stream(places).map(plain::at).toArray();
    double strip = WEIGHTS.roll() * set.blank().height();
    return from(0, 0, places, costs, width, strip);
  }

  /** Cheapest way to cover from a seam at {@code start} to the end. */
  private static double from(
      double start, int next, double[] places, double[] costs, double width, double strip) {
    double best = width - start <= USABLE + HALF_GRID ? strip : Double.POSITIVE_INFINITY;
    for (int i = next; i < places.length; i++) {
      double panel = places[i] + OVERLAP - start;
      boolean lastIsWideEnough = width - places[i] >= RULES.narrowest() - HALF_GRID;
      boolean fits = panel >= RULES.narrowest() - HALF_GRID && panel <= USABLE + HALF_GRID;
      if (fits && lastIsWideEnough) {
        double rest = from(places[i], i + 1, places, costs, width, strip);
        best = Math.min(best, strip + costs[i] + rest);
      }
    }
    return best;
  }
}
