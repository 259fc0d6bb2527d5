package slabwright.tape;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import slabwright.tape.leastsquares.BlunderSearch;
import slabwright.tape.leastsquares.Datum;
import slabwright.tape.leastsquares.LeastSquaresFit;
import slabwright.tape.leastsquares.LeastSquaresFitter;
import slabwright.tape.leastsquares.Observation;
import slabwright.tape.leastsquares.Reliability;
import slabwright.tape.leastsquares.Suspect;
import slabwright.tape.leastsquares.Traverse;

/** Adjusts, takes out a gross error that can be told, and adjusts again. */
final class AdjustmentSolver {
  /** A tellable suspect this many standard deviations out is left out of the shape. */
  private static final double GROSS = 8;

  /** So much better, in sums of squares, than any other explanation; by 300 seeded rooms. */
  private static final double BEYOND_DOUBT = 1000;

  private static final int MOST_LEFT_OUT = 3;

  /** See {@link NormalEquations}: the pivots of what is free get this much hold. */
  private static final double HOLD = 1e-9;

  private final RoomObservations observations;
  private final BooleanSupplier cancelled;
  private final Datum datum;
  private final List<Integer> used;
  private final List<Suspect> leftOut = new ArrayList<>();

  AdjustmentSolver(RoomObservations observations, BooleanSupplier cancelled) {
    this.observations = observations;
    this.cancelled = cancelled;
    datum = Datum.firstWall(observations.about().length);
    used = new ArrayList<>(IntStream.range(0, observations.rows().size()).boxed().toList());
  }

  AdjustmentSolution solve() {
    LeastSquaresFit fit = fit();
    while (true) {
      List<Observation> rows = rows();
      Optional<Reliability> quality = quality(fit, rows);
      if (quality.isEmpty()) {
        return solution(fit, quality, Optional.empty());
      }
      Optional<Suspect> suspect =
          new BlunderSearch(observations.about(), rows, cancelled)
              .in(fit, quality.get())
              .map(this::inAllRows);
      if (suspect.isEmpty() || !gross(suspect.get())) {
        return suspect.isPresent() && sure() < leftOut.size()
            ? putBack(suspect.get())
            : solution(fit, quality, suspect);
      }
      leftOut.add(suspect.get());
      used.remove((Integer) suspect.get().reading());
      fit = new LeastSquaresFitter(datum, rows(), cancelled).from(suspect.get().without().xy());
    }
  }

  /**
   * How many of those left out, from the first, are beyond doubt even where something else does not
   * fit either.
   */
  private int sure() {
    int sure = 0;
    while (sure < leftOut.size()
        && leftOut.get(sure).tellable()
        && leftOut.get(sure).margin() > BEYOND_DOUBT) {
      sure++;
    }
    return sure;
  }

  /**
   * Two gross errors can look like a third reading's. Where something still does not fit, those
   * left out on the way are no more than suspects beside it: they go back in.
   */
  private AdjustmentSolution putBack(Suspect open) {
    List<Suspect> back = new ArrayList<>(leftOut.subList(sure(), leftOut.size()));
    leftOut.removeAll(back);
    Set<Integer> rivals = new LinkedHashSet<>();
    back.stream().skip(1).forEach(s -> rivals.add(s.reading()));
    rivals.add(open.reading());
    rivals.addAll(open.rivals());
    back.forEach(s -> used.add(s.reading()));
    used.sort(null);
    LeastSquaresFit fit = fit();
    Suspect first = back.get(0);
    return solution(
        fit,
        quality(fit, rows()),
        Optional.of(
            new Suspect(
                first.reading(),
                first.fits(),
                first.statistic(),
                first.redundancy(),
                List.copyOf(rivals),
                0,
                first.without())));
  }

  private AdjustmentSolution solution(
      LeastSquaresFit fit, Optional<Reliability> quality, Optional<Suspect> open) {
    double[] xy = fit.xy();
    List<Suspect> out =
        leftOut.stream()
            .map(s -> s.fitting(observations.rows().get(s.reading()).computed(xy)))
            .toList();
    return new AdjustmentSolution(fit, quality, used, out, open);
  }

  /** A gross error can bend a room so far that it looks free; then the walked shape decides. */
  private Optional<Reliability> quality(LeastSquaresFit fit, List<Observation> rows) {
    return Reliability.at(fit.xy(), datum, rows)
        .or(
            () ->
                Reliability.at(walk(rows).closedCorners(), datum, rows)
                    .flatMap(q -> Reliability.held(fit.xy(), datum, rows, HOLD)));
  }

  private Traverse walk(List<Observation> rows) {
    return Traverse.of(observations.about(), rows, -1);
  }

  private boolean gross(Suspect s) {
    return (s.tellable() || s.likely())
        && Math.abs(s.statistic()) > GROSS
        && leftOut.size() < MOST_LEFT_OUT;
  }

  private List<Observation> rows() {
    return used.stream().map(observations.rows()::get).toList();
  }

  /** From the walk with its gap shared out; where that fits badly, from the walk as it was too. */
  private LeastSquaresFit fit() {
    List<Observation> rows = rows();
    Traverse walk = walk(rows);
    LeastSquaresFitter fitter = new LeastSquaresFitter(datum, rows, cancelled);
    LeastSquaresFit fit = fitter.from(walk.closedCorners());
    boolean enough = fitter.good(fit) || rows.size() > BlunderSearch.TRY_ALL;
    return enough ? fit : fitter.from(walk.corners()).better(fit);
  }

  /** The suspect with its own place and its rivals' among all rows instead of those used. */
  private Suspect inAllRows(Suspect s) {
    return new Suspect(
        used.get(s.reading()),
        s.fits(),
        s.statistic(),
        s.redundancy(),
        s.rivals().stream().map(used::get).toList(),
        s.margin(),
        s.without());
  }
}
