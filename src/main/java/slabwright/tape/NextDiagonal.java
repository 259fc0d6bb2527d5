package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.tape.leastsquares.Datum;
import slabwright.tape.leastsquares.DesignRow;
import slabwright.tape.leastsquares.DistanceObservation;
import slabwright.tape.leastsquares.Observation;
import slabwright.tape.leastsquares.Reliability;

/**
 * Which diagonal to tape next: the one that the readings so far say least about, counted in its own
 * standard deviations, among those that can be seen; among all where no visible one helps.
 */
final class NextDiagonal {
  /** What is free gets this much hold, so that its size can be compared at all. */
  private static final double HOLD = 1e-9;

  /** More advice than this helps nobody. */
  private static final int MOST = 6;

  private final RoomObservations observations;
  private final double[] xy;
  private final Datum datum;
  private final LineOfSight sight;

  NextDiagonal(RoomObservations observations, double[] xy) {
    this.observations = observations;
    this.xy = xy.clone();
    datum = Datum.firstWall(xy.length / 2);
    sight = new LineOfSight(xy);
  }

  /** The diagonals that fix the shape, in order; short of that when six are not enough. */
  List<DistanceObservation> untilFixed() {
    List<Observation> rows = new ArrayList<>(observations.rows());
    List<DistanceObservation> advice = new ArrayList<>();
    while (advice.size() < MOST && Reliability.at(xy, datum, rows).isEmpty()) {
      Optional<DistanceObservation> next = best(rows);
      if (next.isEmpty()) {
        break;
      }
      advice.add(next.get());
      rows.add(next.get());
    }
    return advice;
  }

  /** The one that adds most to a shape that is fixed already. */
  Optional<DistanceObservation> best() {
    return best(observations.rows());
  }

  private Optional<DistanceObservation> best(List<Observation> rows) {
    return Reliability.held(xy, datum, rows, HOLD)
        .flatMap(q -> best(q, rows, true).or(() -> best(q, rows, false)));
  }

  private Optional<DistanceObservation> best(
      Reliability q, List<Observation> rows, boolean visible) {
    DistanceObservation best = null;
    double most = 1;
    DesignRow row = new DesignRow();
    int n = xy.length / 2;
    for (int a = 0; a < n; a++) {
      for (int b = a + 2; b < n - (a == 0 ? 1 : 0); b++) {
        DistanceObservation s = observations.diagonal(a, b, xy);
        s.slopes(xy, row);
        double gain = q.cofactor(row) / (s.sd() * s.sd());
        if (gain > most && sight.isClear(a, b) == visible && !taped(rows, a, b)) {
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
                o instanceof DistanceObservation s
                    && Math.min(s.from(), s.to()) == a
                    && Math.max(s.from(), s.to()) == b);
  }
}
