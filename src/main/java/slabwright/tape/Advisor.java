package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.tape.Advice.Kind;
import slabwright.units.UnitSystem;

/** What to say about a room's readings, the most pressing first. */
final class Advisor {
  /** A reading checked less than this is as good as not checked. */
  private static final double HARDLY_CHECKED = 0.01;

  private final TapeRoom room;
  private final Observations observations;
  private final double[] xy;
  private final UnitSystem units;
  private final List<Advice> advice = new ArrayList<>();

  /** Corners {@code xy} as adjusted, two coordinates each. */
  Advisor(TapeRoom room, Observations observations, double[] xy, UnitSystem units) {
    this.room = room;
    this.observations = observations;
    this.xy = xy.clone();
    this.units = units;
  }

  Advisor suspects(Solution solution) {
    ReadingWords words = new ReadingWords(room, observations, units);
    SuspectAdvice suspects = new SuspectAdvice(observations, words, xy);
    solution.leftOut().forEach(s -> advice.add(suspects.leftOut(s)));
    solution.open().ifPresent(s -> advice.add(suspects.open(s)));
    return this;
  }

  Advisor closing(ClosingReport closing) {
    new WalkAdvice(room, closing, units).wideGap().ifPresent(advice::add);
    return this;
  }

  Advisor shape() {
    Sight sight = new Sight(xy);
    int n = room.corners();
    for (int a = 0; a < n; a++) {
      for (int b = a + 2; b < n - (a == 0 ? 1 : 0); b++) {
        if (sight.crosses(a, (a + 1) % n, b, (b + 1) % n)) {
          String sentence =
              "Walls %s and %s cross: a turn may be on the wrong side."
                  .formatted(CornerName.wall(a, n), CornerName.wall(b, n));
          advice.add(new Advice(Kind.WALLS_CROSS, sentence, List.of(), List.of(a, b)));
          return this;
        }
      }
    }
    return this;
  }

  Advisor checks(List<ReadingReport> readings) {
    List<ReadingReport> loose =
        readings.stream().filter(r -> !r.turn() && r.redundancy() < HARDLY_CHECKED).toList();
    if (loose.isEmpty()) {
      return this;
    }
    Optional<Spread> next = new NextDiagonal(observations, xy).best();
    String sentence =
        "Nothing checks %s: a misreading there would not be noticed.%s"
            .formatted(
                ReadingWords.list(loose, ReadingReport::name),
                next.map(d -> " Tape the diagonal " + ReadingWords.corners(d) + " to check more.")
                    .orElse(""));
    List<Integer> places = loose.stream().map(ReadingReport::index).toList();
    advice.add(new Advice(Kind.NOT_CHECKED, sentence, places, List.of()));
    return this;
  }

  List<Advice> advice() {
    return List.copyOf(advice);
  }
}
