package slabwright.inlay.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.stencil.Finding;
import slabwright.inlay.stencil.StencilSet;
import slabwright.units.Message;

/** Seam layouts for one way of turning the strips. */
final class SeamLayoutSearch {
  private final StripDirection turn;
  private final PanelParameters rules;
  private final SeamCostFunction terms;
  private final double across;
  private final double along;

  SeamLayoutSearch(StencilSet set, StripDirection turn, PanelParameters rules) {
    this.turn = turn;
    this.rules = rules;
    this.terms = SeamCostFunction.of(set, turn);
    this.across = turn.across(set.blank());
    this.along = turn.along(set.blank());
  }

  /** The cheapest seams over the candidates, then the cheapest inner joints of each strip. */
  SeamLayout best() {
    double usable = rules.roll().usableWidth();
    double[] places =
        new SeamCandidates(across, usable, rules.overlap())
            .everyStep(rules.pitch())
            .inGaps(terms.gaps(across), rules.weights().near())
            .sorted();
    SeamPlaceSearch.Piece strip = piece(across, usable, rules.weights().roll() * along);
    return layout(
        new SeamPlaceSearch(places, across, strip).cheapest(costs(terms, places)).orElseThrow());
  }

  /** As few strips as the roll allows, all of one width. */
  SeamLayout even() {
    int strips = SeamCandidates.fewest(across, rules.roll().usableWidth(), rules.overlap());
    return layout(SeamCandidates.even(strips, across, rules.overlap()));
  }

  /** The layout with seams where a person put them, in rising order. */
  SeamLayout layout(List<Double> seams) {
    List<Strip> strips = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    SeamCost cost = SeamCost.NONE;
    for (double seam : seams) {
      cost = cost.plus(terms.at(seam, rules.overlap(), rules.weights()));
    }
    List<Double> beside = List.of();
    for (int i = 0; i <= seams.size(); i++) {
      double from = i == 0 ? 0 : seams.get(i - 1);
      double to = i == seams.size() ? across : seams.get(i) + rules.overlap();
      Strip strip = strip(from, to, beside, findings);
      beside = strip.joints();
      strips.add(strip);
      cost = cost.plus(stripCost(strip));
    }
    return new SeamLayout(turn, seams, strips, cost, findings);
  }

  private Strip strip(double from, double to, List<Double> beside, List<Finding> findings) {
    boolean whole = along <= rules.roll().longestPiece();
    return new Strip(
        from, to, whole ? List.of() : joints(terms.inside(from, to), beside, findings));
  }

  private SeamCost stripCost(Strip strip) {
    double roll = along + strip.joints().size() * rules.overlap();
    SeamCost cost = SeamCost.of(0, 0, 0, roll, rules.weights());
    if (!strip.joints().isEmpty()) {
      SeamCostFunction inner = terms.inside(strip.from(), strip.to());
      for (double joint : strip.joints()) {
        cost = cost.plus(inner.at(joint, rules.overlap(), rules.weights()));
      }
    }
    return cost;
  }

  private List<Double> joints(SeamCostFunction inner, List<Double> beside, List<Finding> findings) {
    double longest = rules.roll().longestPiece();
    double[] places =
        new SeamCandidates(along, longest, rules.overlap())
            .everyStep(rules.pitch())
            .inGaps(inner.gaps(along), rules.weights().near())
            .sorted();
    double extra = rules.weights().roll() * rules.overlap();
    SeamPlaceSearch search = new SeamPlaceSearch(places, along, piece(along, longest, extra));
    double[] costs = costs(inner, places);
    Optional<List<Double>> staggered = search.cheapest(awayFrom(beside, places, costs));
    if (staggered.isEmpty()) {
      findings.add(Finding.look(Message.of("inlay.seam-layout-search.joints-not-apart")));
    }
    return staggered.or(() -> search.cheapest(costs)).orElseThrow();
  }

  private double[] awayFrom(List<Double> beside, double[] places, double[] costs) {
    double[] kept = costs.clone();
    for (int i = 0; i < places.length; i++) {
      for (double joint : beside) {
        if (Math.abs(joint - places[i]) < rules.stagger()) {
          kept[i] = Double.POSITIVE_INFINITY;
        }
      }
    }
    return kept;
  }

  private SeamPlaceSearch.Piece piece(double end, double widest, double cost) {
    return new SeamPlaceSearch.Piece(
        Math.min(rules.narrowest(), end), widest, rules.overlap(), cost);
  }

  private double[] costs(SeamCostFunction of, double[] places) {
    double[] costs = new double[places.length];
    for (int i = 0; i < places.length; i++) {
      costs[i] = of.at(places[i], rules.overlap(), rules.weights()).total();
    }
    return costs;
  }
}
