package slabwright.inlay.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Bounds;

/**
 * Merges boxes around the islands of a colour where one piece of film costs less than two.
 *
 * @param reach of overspray, mm: as far out lies paper
 */
record LocalBoxMerging(PanelParameters rules, double reach) {
  /** More boxes than this are merged till they are no more, whatever it costs. */
  private static final int MOST_PAIRED = 24;

  /** Boxes that meet become one, until none do. */
  static List<Bounds> apart(List<Bounds> boxes) {
    List<Bounds> left = new ArrayList<>();
    for (Bounds next : boxes) {
      Bounds b = next;
      boolean grown = true;
      while (grown) {
        grown = false;
        for (int i = left.size() - 1; i >= 0; i--) {
          if (left.get(i).meets(b)) {
            b = b.including(left.remove(i));
            grown = true;
          }
        }
      }
      left.add(b);
    }
    return left;
  }

  /** The pair whose merging spares most is merged, until none spares anything. */
  List<Bounds> merged(List<Bounds> boxes) {
    List<Bounds> now = boxes;
    Optional<List<Bounds>> better = cheaper(now);
    while (better.isPresent()) {
      now = better.get();
      better = cheaper(now);
    }
    return now;
  }

  /** With the pair merged whose merging spares most; empty where none spares anything. */
  private Optional<List<Bounds>> cheaper(List<Bounds> now) {
    Optional<List<Bounds>> best = Optional.empty();
    double least = now.size() > MOST_PAIRED ? Double.POSITIVE_INFINITY : estimate(now);
    for (int i = 0; i < now.size(); i++) {
      for (int j = i + 1; j < now.size(); j++) {
        List<Bounds> other = new ArrayList<>(now);
        other.remove(j);
        other.set(i, now.get(i).including(now.get(j)));
        List<Bounds> clear = apart(other);
        double cost = estimate(clear);
        if (cost < least) {
          least = cost;
          best = Optional.of(clear);
        }
      }
    }
    return best;
  }

  /** Without the seams: roll, film, paper and pieces. */
  private double estimate(List<Bounds> boxes) {
    return boxes.stream().mapToDouble(this::estimate).sum();
  }

  private double estimate(Bounds b) {
    double usable = rules.roll().usableWidth();
    double down = roll(b.width(), b.height(), usable);
    double across = roll(b.height(), b.width(), usable);
    double film = b.width() * b.height();
    double around = (b.width() + 2 * reach) * (b.height() + 2 * reach) - film;
    return rules.weights().roll() * Math.min(down, across)
        + LocalBlankPlanner.LAYING * film / LocalBlankPlanner.M2
        + LocalBlankPlanner.PAPERING * around / LocalBlankPlanner.M2
        + LocalBlankPlanner.PIECE;
  }

  private double roll(double across, double along, double usable) {
    int strips = across <= usable ? 1 : SeamCandidates.fewest(across, usable, rules.overlap());
    return strips * along;
  }
}
