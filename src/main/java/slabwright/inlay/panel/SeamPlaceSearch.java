package slabwright.inlay.panel;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * The cheapest seam places, by dynamic programming: the cheapest layout that ends with a seam at a
 * place is the cheapest of all that end with an earlier one a legal piece away, plus this seam.
 * Exact over the given places; O(n²) in their number.
 */
final class SeamPlaceSearch {
  /** Rounding slack, mm: half the grid on which outlines and seams lie. */
  static final double SLACK = 5e-4;

  private final double[] places;
  private final double end;
  private final Piece piece;

  /**
   * The pieces allowed.
   *
   * @param narrowest least width, mm
   * @param widest greatest width, mm
   * @param overlap between two pieces, mm
   * @param cost of one piece, whatever its width
   */
  record Piece(double narrowest, double widest, double overlap, double cost) {
    boolean allows(double width) {
      return width >= narrowest - SLACK && width <= widest + SLACK;
    }
  }

  /**
   * @param places sorted, all between 0 and {@code end}
   * @param end the length to be covered
   */
  SeamPlaceSearch(double[] places, double end, Piece piece) {
    this.places = places;
    this.end = end;
    this.piece = piece;
  }

  /**
   * The cheapest seams.
   *
   * @param seamCost cost of a seam at each place; infinite where none may be
   * @return nothing when no choice of places makes legal pieces
   */
  Optional<List<Double>> cheapest(double[] seamCost) {
    int n = places.length;
    double[] best = new double[n + 1];
    int[] from = new int[n + 1];
    Arrays.fill(best, Double.POSITIVE_INFINITY);
    for (int to = 0; to <= n; to++) {
      double here = piece.cost() + (to < n ? seamCost[to] : 0);
      for (int before = -1; before < to; before++) {
        double sum = here + (before < 0 ? 0 : best[before]);
        if (sum < best[to] && piece.allows(width(before, to))) {
          best[to] = sum;
          from[to] = before;
        }
      }
    }
    return Double.isInfinite(best[n]) ? Optional.empty() : Optional.of(trace(from));
  }

  private double width(int before, int to) {
    double start = before < 0 ? 0 : places[before];
    return to == places.length ? end - start : places[to] + piece.overlap() - start;
  }

  private List<Double> trace(int[] from) {
    Deque<Double> seams = new ArrayDeque<>();
    for (int i = from[places.length]; i >= 0; i = from[i]) {
      seams.addFirst(places[i]);
    }
    return List.copyOf(seams);
  }
}
