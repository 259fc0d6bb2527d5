package slabwright.tape;

import java.util.List;
import slabwright.units.Message;

/**
 * One sentence about the readings, for a person in the room.
 *
 * @param readings the places of the readings it is about
 * @param corners the corners it is about, for showing the place
 */
public record TapeAdvice(
    Kind kind, Message sentence, List<Integer> readings, List<Integer> corners) {
  public TapeAdvice {
    readings = List.copyOf(readings);
    corners = List.copyOf(corners);
  }

  /** What the sentence is about. */
  public enum Kind {
    /** A gross error was named and left out. */
    LEFT_OUT,
    /** One reading stands out and should be taken again. */
    MEASURE_AGAIN,
    /** Something is wrong, and the readings cannot tell what. */
    CANNOT_TELL,
    /** A plain walk closes badly. */
    WIDE_GAP,
    /** A plain walk closes as well as its turns let it; one slip would make it close far better. */
    MAYBE_SLIP,
    /** All readings together scatter more than their stated errors. */
    SCATTER,
    /** Readings that nothing checks. */
    NOT_CHECKED,
    /** Two walls cross. */
    WALLS_CROSS
  }
}
