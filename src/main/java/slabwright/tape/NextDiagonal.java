package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which diagonal to tape next: the one that the readings so far say least about, counted in its own
 * standard deviations, among those that can be seen; among all where no visible one helps.
 */
final class NextDiagonal {
  /** What is free gets this much hold, so that its size can be compared at all. */
  private static final double HOLD = 1e-9;

  /** More advice than this helps nobody. */
  private static final int MOST = 6;

  private final Observations observations;
  private final double[] xy;
  private final Datum datum;
  private final Sight sight;

  NextDiagonal(Observations observations, double[] xy) {
    this.observations = observations;
    this.xy = xy.clone();
    datum = Datum.firstWall(xy.length / 2);
    sight = new Sight(xy);
  }

  /** The diagonals that fix the shape, in order; short of that when six are not enough. */
  List<Spread> untilFixed() {
    List<Observation> rows = new ArrayList<>(observations.rows());
    List<Spread> advice = new ArrayList<>();
    while (advice.size() < MOST && Quality.at(xy, datum, rows).isEmpty()) {
      Optional<Spread> next = best(rows);
      if (next.isEmpty()) {
        break;
      }
      advice.add(next.get());
      rows.add(next.get());
    }
    return advice;
  }

  /** The one that adds most to a shape that is fixed already. */
  Optional<Spread> best() {
    return best(observations.rows());
  }

  private Optional<Spread> best(List<Observation> rows) {
    return Quality.held(xy, datum, rows, HOLD)
        .flatMap(q -> best(q, rows, true).or(() -> best(q, rows, false)));
  }

  private Optional<Spread> best(Quality q, List<Observation> rows, boolean visible) {
    Spread best = null;
    double most = 1;
    Row row = new Row();
    int n = xy.length / 2;
    for (int a = 0; a < n; a++) {
      for (int b = a + 2; b < n - (a == 0 ? 1 : 0); b++) {
        Spread s = observations.diagonal(a, b, xy);
        s.slopes(xy, row);
        double gain = q.cofactor(row) / (s.sd() * s.sd());
        if (gain > most && sight.clear(a, b) == visible && !taped(rows, a, b)) {
          best = s;
          most = gain;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean taped(List<Observation> rows, int a, int b) {
    return rows.stream()
        .anyMatch(
            o ->
                o instanceof Spread s
                    && Math.min(s.from(), s.to()) == a
                    && Math.max(s.from(), s.to()) == b);
  }
}
