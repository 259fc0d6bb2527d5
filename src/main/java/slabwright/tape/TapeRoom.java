package slabwright.tape;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import slabwright.units.UnitSystem;

/**
 * A room as it was taped: how many corners, and every reading in the order taken. Says nothing of
 * the shape that fits them; see {@link RoomAdjustment}.
 *
 * @param corners as many as there are walls, measured or not
 * @param notes open edges, kerbs and doorways
 * @param turnError degrees, one standard deviation of a turn that was read
 * @param closingLimit gap over perimeter from which a plain walk is called bad; where none is
 *     stated the stated errors of tape and turns say it
 */
@RecordBuilder
public record TapeRoom(
    int corners,
    List<Reading> readings,
    List<WallNote> notes,
    TapeError tapeError,
    double turnError,
    OptionalDouble closingLimit)
    implements TapeRoomBuilder.With {
  /** Degrees: what is declared true is still taken to be this far off. */
  public static final double SMALLEST_TURN_ERROR = 0.001;

  /** A turn called left or right is 90° ± 0.5°. */
  public static final double USUAL_TURN_ERROR = 0.5;

  public static final int FEWEST_CORNERS = 3;
  public static final int MOST_CORNERS = 200;

  public TapeRoom {
    readings = List.copyOf(readings);
    notes = List.copyOf(notes);
  }

  /** A room of so many corners with nothing read yet. */
  public static TapeRoom of(int corners) {
    return new TapeRoom(
        corners, List.of(), List.of(), TapeError.USUAL, USUAL_TURN_ERROR, OptionalDouble.empty());
  }

  /** The system that most lengths were typed in; feet where there are as many of both. */
  public UnitSystem typedIn() {
    int more = 0;
    for (Reading r : readings) {
      if (r instanceof Reading.Taped t && t.length().typedIn().isPresent()) {
        more += t.length().typedIn().get() == UnitSystem.METRIC ? 1 : -1;
      }
    }
    return more > 0 ? UnitSystem.METRIC : UnitSystem.FEET_INCHES;
  }

  public TapeRoom withClosingLimit(double v) {
    return new TapeRoom(corners, readings, notes, tapeError, turnError, OptionalDouble.of(v));
  }

  /** The same room with one more corner; its wall has nothing read yet. */
  public TapeRoom withWall() {
    return new TapeRoom(corners + 1, readings, notes, tapeError, turnError, closingLimit);
  }

  /** The same room with one note more. */
  public TapeRoom with(WallNote note) {
    List<WallNote> more = new ArrayList<>(notes);
    more.add(note);
    return new TapeRoom(corners, readings, more, tapeError, turnError, closingLimit);
  }

  /** The same room with one reading more. */
  public TapeRoom with(Reading reading) {
    List<Reading> more = new ArrayList<>(readings);
    more.add(reading);
    return withReadings(more);
  }

  /** The same room with a reading taken again. */
  public TapeRoom replacing(int index, Reading reading) {
    List<Reading> changed = new ArrayList<>(readings);
    changed.set(index, reading);
    return withReadings(changed);
  }

  /** The same room with a reading struck out. */
  public TapeRoom without(int index) {
    List<Reading> fewer = new ArrayList<>(readings);
    fewer.remove(index);
    return withReadings(fewer);
  }
}
