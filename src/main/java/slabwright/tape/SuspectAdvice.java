package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.tape.TapeAdvice.Kind;
import slabwright.tape.leastsquares.Observation;
import slabwright.tape.leastsquares.Suspect;

/** What to say of a reading that does not fit. */
final class SuspectAdvice {
  private final RoomObservations observations;
  private final ReadingWords words;
  private final double[] xy;

  SuspectAdvice(RoomObservations observations, ReadingWords words, double[] xy) {
    this.observations = observations;
    this.words = words;
    this.xy = xy.clone();
  }

  TapeAdvice leftOut(Suspect s) {
    String says = s.tellable() ? "the others say " : "most likely it is ";
    boolean rivals = !s.tellable() && !s.rivals().isEmpty();
    String sentence =
        "Measure %s again: %s does not fit, %s%s%s. It is left out until then.%s"
            .formatted(
                words.name(s.reading()),
                words.typed(s.reading()),
                says,
                words.shown(s.reading(), s.fits()),
                explained(s),
                rivals ? " Check " + words.names(s.rivals()) + " too." : "");
    return advice(Kind.LEFT_OUT, sentence, List.of(s.reading()));
  }

  /** A suspect that stayed in. */
  TapeAdvice open(Suspect s) {
    return s.tellable() ? standsOut(s) : cannotTell(s);
  }

  private TapeAdvice standsOut(Suspect s) {
    String sentence =
        "Measure %s again: %s stands out, the others say %s%s."
            .formatted(
                words.name(s.reading()),
                words.typed(s.reading()),
                words.shown(s.reading(), s.fits()),
                explained(s));
    return advice(Kind.MEASURE_AGAIN, sentence, List.of(s.reading()));
  }

  private TapeAdvice cannotTell(Suspect s) {
    List<Integer> rows = new ArrayList<>(List.of(s.reading()));
    rows.addAll(s.rivals());
    String next =
        new NextDiagonal(observations, xy)
            .best()
            .map(d -> ", or tape the diagonal " + ReadingWords.corners(d))
            .orElse("");
    String sentence =
        rows.size() == 1
            ? "Something does not fit, perhaps %s, but too little checks it: measure it again%s."
            : "Something does not fit, and the readings cannot tell between %s: measure them"
                + " again%s.";
    return advice(Kind.CANNOT_TELL, sentence.formatted(words.names(rows), next), rows);
  }

  /** In brackets, the slip that explains it; nothing where none does. */
  private String explained(Suspect s) {
    Observation o = observations.rows().get(s.reading());
    double within = 4 * o.sd() / Math.sqrt(Math.max(s.redundancy(), 1e-3));
    return why(s, o, within).map(w -> " (" + w + ")").orElse("");
  }

  private Optional<String> why(Suspect s, Observation o, double within) {
    if (words.reading(s.reading()) instanceof Reading.Taped taped) {
      return Misreading.of(taped.length(), s.fits(), within);
    }
    boolean flipped = Math.abs(Math.IEEEremainder(o.read() + s.fits(), 2 * Math.PI)) <= within;
    return flipped ? Optional.of("left and right exchanged") : Optional.empty();
  }

  private TapeAdvice advice(Kind kind, String sentence, List<Integer> rows) {
    List<Integer> places = rows.stream().map(observations::reading).toList();
    List<Integer> corners =
        rows.stream()
            .flatMap(r -> observations.rows().get(r).corners(xy).stream())
            .distinct()
            .toList();
    return new TapeAdvice(kind, sentence, places, corners);
  }
}
