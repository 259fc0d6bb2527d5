package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import slabwright.tape.Advice.Kind;
import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;

/** What to say about a room's readings, the most pressing first. */
final class Advisor {
  /** A reading checked less than this is as good as not checked. */
  private static final double HARDLY_CHECKED = 0.01;

  private static final int NAMED_AT_MOST = 4;

  private final TapeRoom room;
  private final Observations observations;
  private final Solution solution;
  private final ClosingReport closing;
  private final List<ReadingReport> readings;
  private final double[] xy;
  private final UnitSystem units;
  private final List<Advice> advice = new ArrayList<>();

  Advisor(
      TapeRoom room,
      Observations observations,
      Solution solution,
      ClosingReport closing,
      List<ReadingReport> readings,
      double[] xy,
      UnitSystem units) {
    this.room = room;
    this.observations = observations;
    this.solution = solution;
    this.closing = closing;
    this.readings = readings;
    this.xy = xy.clone();
    this.units = units;
  }

  List<Advice> all(boolean plain) {
    solution.leftOut().forEach(this::leftOut);
    solution.open().ifPresent(this::open);
    if (plain) {
      new WalkAdvice(room, closing, units).wideGap().ifPresent(advice::add);
    }
    crossing().ifPresent(advice::add);
    notChecked().ifPresent(advice::add);
    return advice;
  }

  private void leftOut(Suspect s) {
    String says = s.tellable() ? "the others say " : "most likely it is ";
    String too =
        s.tellable() || s.rivals().isEmpty() ? "" : " Check " + names(s.rivals()) + " too.";
    String sentence =
        "Measure %s again: %s does not fit, %s%s%s. It is left out until then.%s"
            .formatted(
                name(s.reading()),
                typed(s.reading()),
                says,
                shown(s.reading(), s.fits()),
                explained(s),
                too);
    add(Kind.LEFT_OUT, sentence, List.of(s.reading()));
  }

  private void open(Suspect s) {
    if (s.tellable()) {
      String sentence =
          "Measure %s again: %s stands out, the others say %s%s."
              .formatted(
                  name(s.reading()),
                  typed(s.reading()),
                  shown(s.reading(), s.fits()),
                  explained(s));
      add(Kind.MEASURE_AGAIN, sentence, List.of(s.reading()));
      return;
    }
    List<Integer> rows = new ArrayList<>(List.of(s.reading()));
    rows.addAll(s.rivals());
    String next =
        new NextDiagonal(observations, xy)
            .best()
            .map(d -> ", or tape the diagonal " + corners(d))
            .orElse("");
    String sentence =
        rows.size() == 1
            ? "Something does not fit, perhaps %s, but too little checks it: measure it again%s."
                .formatted(name(s.reading()), next)
            : "Something does not fit, and the readings cannot tell between %s: measure them again%s."
                .formatted(names(rows), next);
    add(Kind.CANNOT_TELL, sentence, rows);
  }

  private static String corners(Spread d) {
    return CornerName.of(d.from()) + " to " + CornerName.of(d.to());
  }

  private String explained(Suspect s) {
    Observation o = observations.rows().get(s.reading());
    double within = 4 * o.sd() / Math.sqrt(Math.max(s.redundancy(), 1e-3));
    Optional<String> why;
    if (o instanceof Bend b) {
      boolean flipped = Math.abs(Math.IEEEremainder(b.read() + s.fits(), 2 * Math.PI)) <= within;
      why = flipped ? Optional.of("left and right exchanged") : Optional.empty();
    } else {
      Reading.Taped taped = (Reading.Taped) reading(s.reading());
      why = Misreading.of(taped.length(), s.fits(), within);
    }
    return why.map(w -> " (" + w + ")").orElse("");
  }

  private Optional<Advice> crossing() {
    Sight sight = new Sight(xy);
    int n = room.corners();
    for (int a = 0; a < n; a++) {
      for (int b = a + 2; b < n - (a == 0 ? 1 : 0); b++) {
        if (sight.crosses(a, (a + 1) % n, b, (b + 1) % n)) {
          String sentence =
              "Walls %s and %s cross: a turn may be on the wrong side."
                  .formatted(CornerName.wall(a, n), CornerName.wall(b, n));
          return Optional.of(new Advice(Kind.WALLS_CROSS, sentence, List.of(), List.of(a, b)));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Advice> notChecked() {
    List<ReadingReport> loose =
        readings.stream().filter(r -> !r.turn() && r.redundancy() < HARDLY_CHECKED).toList();
    if (loose.isEmpty()) {
      return Optional.empty();
    }
    String next =
        new NextDiagonal(observations, xy)
            .best()
            .map(d -> " Tape the diagonal " + corners(d) + " to check more.")
            .orElse("");
    String sentence =
        "Nothing checks %s: a misreading there would not be noticed.%s"
            .formatted(list(loose, ReadingReport::name), next);
    List<Integer> places = loose.stream().map(ReadingReport::index).toList();
    return Optional.of(new Advice(Kind.NOT_CHECKED, sentence, places, List.of()));
  }

  private void add(Kind kind, String sentence, List<Integer> rows) {
    List<Integer> places = rows.stream().map(observations::reading).toList();
    List<Integer> corners =
        rows.stream()
            .flatMap(r -> observations.rows().get(r).corners(xy).stream())
            .distinct()
            .toList();
    advice.add(new Advice(kind, sentence, places, corners));
  }

  private String names(List<Integer> rows) {
    return list(rows, this::name);
  }

  private static <T> String list(List<T> items, Function<T, String> name) {
    String head = items.stream().limit(NAMED_AT_MOST).map(name).collect(Collectors.joining(", "));
    int more = items.size() - NAMED_AT_MOST;
    return more > 0 ? head + " and " + more + " more" : head;
  }

  private Reading reading(int row) {
    return room.readings().get(observations.reading(row));
  }

  private String name(int row) {
    return reading(row).name(room.corners());
  }

  private String typed(int row) {
    return reading(row) instanceof Reading.Taped t
        ? t.length().toString()
        : shown(row, observations.rows().get(row).read());
  }

  private String shown(int row, double value) {
    if (!(observations.rows().get(row) instanceof Bend)) {
      return LengthFormat.show(value, units);
    }
    double degrees = Math.toDegrees(Math.IEEEremainder(value, 2 * Math.PI));
    return String.format(
        Locale.ROOT, "%.1f° to the %s", Math.abs(degrees), degrees < 0 ? "right" : "left");
  }
}
