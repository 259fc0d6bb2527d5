package slabwright.inlay.panel;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import slabwright.inlay.stencil.Finding;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Region;
import slabwright.units.Message;

/**
 * Plans the panels of one inlay. All its stencils get the same panels, so the cost of a seam counts
 * the openings of all of them.
 *
 * <p>The seams across the blank are the cheapest over the candidates (exact); inner joints are then
 * the cheapest strip by strip, each kept apart from those of the strip before.
 */
public final class SeamPlanner {
  /** Of a panel beside a seam that a person pushed to the blank's edge, mm. */
  private static final double LEAST_WIDTH = 1;

  private final StencilSet set;
  private final PanelParameters rules;
  private final Map<StripDirection, SeamLayoutSearch> searches =
      new EnumMap<>(StripDirection.class);

  /**
   * Prepares the search for both turns of the blank.
   *
   * @throws IllegalArgumentException when {@link #refusals} has something to say, or the set is
   *     empty
   */
  public SeamPlanner(StencilSet set, PanelParameters rules) {
    if (set.blank().isEmpty() || !refusals(rules).isEmpty()) {
      throw new IllegalArgumentException("nothing to plan, or rules that cannot be met");
    }
    this.set = set;
    this.rules = rules;
    for (StripDirection turn : StripDirection.values()) {
      searches.put(turn, new SeamLayoutSearch(set, turn, rules));
    }
  }

  /** Why no panel could be made by these rules; empty when they can be met. */
  public static List<Finding> refusals(PanelParameters rules) {
    double room = 3 * rules.narrowest();
    if (rules.roll().usableWidth() > rules.roll().width()) {
      return List.of(Finding.cannot(Message.of("inlay.seam-planner.usable-width-more-than-roll")));
    }
    if (rules.overlap() < 0 || rules.roll().usableWidth() < room) {
      return List.of(Finding.cannot(Message.of("inlay.seam-planner.overlap-too-wide")));
    }
    if (rules.roll().longestPiece() < room) {
      return List.of(Finding.cannot(Message.of("inlay.seam-planner.longest-piece-too-short")));
    }
    return List.of();
  }

  /** The cheapest plan of both turns; strips down the blank when both cost the same. */
  public PanelPlan best() {
    SeamLayout down = searches.get(StripDirection.DOWN).best();
    SeamLayout across = searches.get(StripDirection.ACROSS).best();
    return plan(across.cost().total() < down.cost().total() ? across : down);
  }

  /** The cheapest plan for strips running this way, with later letters and no ticks. */
  PanelPlan bestWithoutTicks(StripDirection turn, int letters) {
    return new PanelBuilder(set.blank(), set.openings(), rules, searches.get(turn).best(), letters)
        .buildWithoutTicks();
  }

  /** The cheapest plan for strips running this way. */
  public PanelPlan best(StripDirection turn) {
    return plan(searches.get(turn).best());
  }

  /** The plan with as few strips as can be, evenly spaced. */
  public PanelPlan even(StripDirection turn) {
    return plan(searches.get(turn).even());
  }

  /** The plan with seams where a person put them; a panel too wide or narrow is a finding. */
  public PanelPlan at(StripDirection turn, List<Double> seams) {
    return plan(searches.get(turn).layout(inside(turn, seams)));
  }

  /** What seams cost where a person put them. */
  public SeamCost costOf(StripDirection turn, List<Double> seams) {
    return searches.get(turn).layout(inside(turn, seams)).cost();
  }

  /** Rising, and held so far inside the blank that every panel has some width. */
  private List<Double> inside(StripDirection turn, List<Double> seams) {
    double last = turn.across(set.blank()) - rules.overlap() - LEAST_WIDTH;
    return seams.stream().map(s -> Math.max(LEAST_WIDTH, Math.min(last, s))).sorted().toList();
  }

  private PanelPlan plan(SeamLayout layout) {
    Region open = set.openings();
    return new PanelBuilder(set.blank(), open, rules, layout, 0).build();
  }
}
