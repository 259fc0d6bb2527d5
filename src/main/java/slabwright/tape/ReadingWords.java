package slabwright.tape;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import slabwright.tape.leastsquares.DistanceObservation;
import slabwright.tape.leastsquares.TurnObservation;
import slabwright.units.LengthFormat;
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

  String name(int row) {
    return reading(row).name(room.corners());
  }

  String names(List<Integer> rows) {
    return list(rows, this::name);
  }

  /** The first few by name, and how many more. */
  static <T> String list(List<T> items, Function<T, String> name) {
    String head = items.stream().limit(NAMED_AT_MOST).map(name).collect(Collectors.joining(", "));
    int more = items.size() - NAMED_AT_MOST;
    return more > 0 ? head + " and " + more + " more" : head;
  }

  static String corners(DistanceObservation diagonal) {
    return CornerName.of(diagonal.from()) + " to " + CornerName.of(diagonal.to());
  }

  /** The value as it was typed. */
  String typed(int row) {
    return reading(row) instanceof Reading.Taped t
        ? t.length().toString()
        : shown(row, observations.rows().get(row).read());
  }

  /** A value for a row: a length, or a turn in degrees. */
  String shown(int row, double value) {
    if (!(observations.rows().get(row) instanceof TurnObservation)) {
      return LengthFormat.show(value, units);
    }
    double degrees = Math.toDegrees(Math.IEEEremainder(value, 2 * Math.PI));
    return String.format(
        Locale.ROOT, "%.1f° to the %s", Math.abs(degrees), degrees < 0 ? "right" : "left");
  }
}
