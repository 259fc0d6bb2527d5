package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.tape.TapeAdvice.Kind;
import slabwright.tape.leastsquares.Observation;
import slabwright.tape.leastsquares.Suspect;
import slabwright.units.Message;

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
    Message name = words.name(s.reading());
    Message typed = words.typed(s.reading());
    Message sentence =
        s.tellable()
            ? Message.of("tape.suspect-advice.left-out", name, typed, explained(s))
            : Message.of("tape.suspect-advice.left-out-as-likely", name, typed, explained(s));
    if (!s.tellable() && !s.rivals().isEmpty()) {
      sentence =
          Message.of("tape.suspect-advice.check-others-too", sentence, words.names(s.rivals()));
    }
    return advice(Kind.LEFT_OUT, sentence, List.of(s.reading()));
  }

  /** A suspect that stayed in. */
  TapeAdvice open(Suspect s) {
    return s.tellable() ? standsOut(s) : cannotTell(s);
  }

  private TapeAdvice standsOut(Suspect s) {
    Message sentence =
        Message.of(
            "tape.suspect-advice.stands-out",
            words.name(s.reading()),
            words.typed(s.reading()),
            explained(s));
    return advice(Kind.MEASURE_AGAIN, sentence, List.of(s.reading()));
  }

  private TapeAdvice cannotTell(Suspect s) {
    List<Integer> rows = new ArrayList<>(List.of(s.reading()));
    rows.addAll(s.rivals());
    Message names = words.names(rows);
    boolean one = rows.size() == 1;
    Message sentence =
        new NextDiagonal(observations, xy)
            .best()
            .map(ReadingWords::corners)
            .map(d -> one ? perhapsOrDiagonal(names, d) : amongOrDiagonal(names, d))
            .orElseGet(
                () ->
                    one
                        ? Message.of("tape.suspect-advice.perhaps", names)
                        : Message.of("tape.suspect-advice.among", names));
    return advice(Kind.CANNOT_TELL, sentence, rows);
  }

  private static Message perhapsOrDiagonal(Message name, Message diagonal) {
    return Message.of("tape.suspect-advice.perhaps-or-diagonal", name, diagonal);
  }

  private static Message amongOrDiagonal(Message names, Message diagonal) {
    return Message.of("tape.suspect-advice.among-or-diagonal", names, diagonal);
  }

  /** What it would be by the others, and in brackets the slip that explains it if one does. */
  private Message explained(Suspect s) {
    Message fits = words.shown(s.reading(), s.fits());
    Observation o = observations.rows().get(s.reading());
    double within = 4 * o.sd() / Math.sqrt(Math.max(s.redundancy(), 1e-3));
    return why(s, o, within)
        .map(w -> Message.of("tape.suspect-advice.explained", fits, w))
        .orElse(fits);
  }

  private Optional<Message> why(Suspect s, Observation o, double within) {
    if (words.reading(s.reading()) instanceof Reading.Taped taped) {
      return Misreading.of(taped.length(), s.fits(), within);
    }
    boolean flipped = Math.abs(Math.IEEEremainder(o.read() + s.fits(), 2 * Math.PI)) <= within;
    return flipped
        ? Optional.of(Message.of("tape.suspect-advice.left-and-right-exchanged"))
        : Optional.empty();
  }

  private TapeAdvice advice(Kind kind, Message sentence, List<Integer> rows) {
    List<Integer> places = rows.stream().map(observations::reading).toList();
    List<Integer> corners =
        rows.stream()
            .flatMap(r -> observations.rows().get(r).corners(xy).stream())
            .distinct()
            .toList();
    return new TapeAdvice(kind, sentence, places, corners);
  }
}
