package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.tape.TapeAdvice.Kind;
import slabwright.tape.leastsquares.DistanceObservation;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/** What to say about a room's readings, the most pressing first. */
final class TapeAdvisor {
  /** A reading checked less than this is as good as not checked. */
  private static final double HARDLY_CHECKED = 0.01;

  /** The standard normal deviate that is passed once in a thousand. */
  private static final double ONE_IN_A_THOUSAND = 3.09;

  private final TapeRoom room;
  private final RoomObservations observations;
  private final double[] xy;
  private final UnitSystem units;
  private final List<TapeAdvice> advice = new ArrayList<>();

  /** Corners {@code xy} as adjusted, two coordinates each. */
  TapeAdvisor(TapeRoom room, RoomObservations observations, double[] xy, UnitSystem units) {
    this.room = room;
    this.observations = observations;
    this.xy = xy.clone();
    this.units = units;
  }

  TapeAdvisor suspects(AdjustmentSolution solution) {
    ReadingWords words = new ReadingWords(room, observations, units);
    SuspectAdvice suspects = new SuspectAdvice(observations, words, xy);
    solution.leftOut().forEach(s -> advice.add(suspects.leftOut(s)));
    solution.open().ifPresent(s -> advice.add(suspects.open(s)));
    return this;
  }

  TapeAdvisor closing(ClosingReport closing) {
    TraverseAdvice traverse = new TraverseAdvice(room, closing, units);
    traverse.wideGap().or(traverse::maybeSlip).ifPresent(advice::add);
    return this;
  }

  /**
   * Says when the scatter shows that the stated errors are too small: by the chi-square test at a
   * risk of 0.1 %, its limit after Wilson and Hilferty (from memory).
   */
  TapeAdvisor scatter(double sigma, int redundancy) {
    double step = 2.0 / (9 * Math.max(1, redundancy));
    double limit = Math.sqrt(Math.pow(1 - step + ONE_IN_A_THOUSAND * Math.sqrt(step), 3));
    if (redundancy > 1 && sigma > limit) {
      Message sentence = Message.of("tape.tape-advisor.scatter", sigma);
      advice.add(new TapeAdvice(Kind.SCATTER, sentence, List.of(), List.of()));
    }
    return this;
  }

  TapeAdvisor shape() {
    LineOfSight sight = new LineOfSight(xy);
    int n = room.corners();
    for (int a = 0; a < n; a++) {
      for (int b = a + 2; b < n - (a == 0 ? 1 : 0); b++) {
        if (sight.crosses(a, (a + 1) % n, b, (b + 1) % n)) {
          Message sentence =
              Message.of(
                  "tape.tape-advisor.walls-cross", CornerName.wall(a, n), CornerName.wall(b, n));
          advice.add(new TapeAdvice(Kind.WALLS_CROSS, sentence, List.of(), List.of(a, b)));
          return this;
        }
      }
    }
    return this;
  }

  TapeAdvisor checks(List<ReadingReport> readings) {
    List<ReadingReport> loose =
        readings.stream().filter(r -> !r.turn() && r.redundancy() < HARDLY_CHECKED).toList();
    if (loose.isEmpty()) {
      return this;
    }
    Optional<DistanceObservation> next = new NextDiagonal(observations, xy).best();
    Message unchecked =
        Message.of(
            "tape.tape-advisor.nothing-checks", ReadingWords.list(loose, ReadingReport::name));
    Message sentence =
        next.map(ReadingWords::corners)
            .map(d -> Message.of("tape.tape-advisor.tape-the-diagonal", unchecked, d))
            .orElse(unchecked);
    List<Integer> places = loose.stream().map(ReadingReport::index).toList();
    advice.add(new TapeAdvice(Kind.NOT_CHECKED, sentence, places, List.of()));
    return this;
  }

  List<TapeAdvice> advice() {
    return List.copyOf(advice);
  }
}
