package slabwright.tape;

import java.util.List;
import java.util.function.Function;
import slabwright.tape.leastsquares.DistanceObservation;
import slabwright.tape.leastsquares.TurnObservation;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/** Readings and their values in the words of sentences; readings by their row. */
final class ReadingWords {
  private static final int NAMED_AT_MOST = 4;

  private final TapeRoom room;
  private final RoomObservations observations;
  private final UnitSystem units;

  ReadingWords(TapeRoom room, RoomObservations observations, UnitSystem units) {
    this.room = room;
    this.observations = observations;
    this.units = units;
  }

  Reading reading(int row) {
    return room.readings().get(observations.reading(row));
  }

  Message name(int row) {
    return reading(row).name(room.corners());
  }

  Message names(List<Integer> rows) {
    return list(rows, this::name);
  }

  /** The first few by name, and how many more. */
  static <T> Message list(List<T> items, Function<T, Message> name) {
    Message head = list(items.stream().limit(NAMED_AT_MOST).map(name).toList());
    int more = items.size() - NAMED_AT_MOST;
    return more > 0 ? Message.of("tape.reading-words.and-more", head, more) : head;
  }

  /** With commas between; there is at least one. */
  static Message list(List<Message> names) {
    return names.stream()
        .reduce((a, b) -> Message.of("tape.reading-words.list", a, b))
        .orElseThrow();
  }

  static Message corners(DistanceObservation diagonal) {
    return Message.of(
        "tape.reading-words.corners", CornerName.of(diagonal.from()), CornerName.of(diagonal.to()));
  }

  /** The value as it was typed. */
  Message typed(int row) {
    return reading(row) instanceof Reading.Taped t
        ? plain(t.length().toString())
        : shown(row, observations.rows().get(row).read());
  }

  /** A value for a row: a length, or a turn in degrees. */
  Message shown(int row, double value) {
    if (!(observations.rows().get(row) instanceof TurnObservation)) {
      return plain(LengthFormat.show(value, units));
    }
    double degrees = Math.toDegrees(Math.IEEEremainder(value, 2 * Math.PI));
    return degrees < 0
        ? Message.of("tape.reading-words.degrees-right", Math.abs(degrees))
        : Message.of("tape.reading-words.degrees-left", Math.abs(degrees));
  }

  private static Message plain(String length) {
    return Message.of("tape.reading-words.length", length);
  }
}
