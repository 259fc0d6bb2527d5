package slabwright.tape;

import java.util.List;
import slabwright.units.Message;

/** What came of adjusting a room's readings. */
public sealed interface RoomResult {
  /** The readings fix the room. */
  record Adjusted(AdjustedRoom room) implements RoomResult {}

  /**
   * The readings leave the shape free.
   *
   * @param sentence what to measure next
   * @param diagonals the readings that would fix it, with the lengths they would have in the walk
   *     as sketched
   */
  record NeedsMore(Message sentence, List<Reading.Diagonal> diagonals, ClosingReport sketch)
      implements RoomResult {
    public NeedsMore {
      diagonals = List.copyOf(diagonals);
    }
  }

  /** The readings can't be used; the sentence says what to do. */
  record Refused(Message sentence) implements RoomResult {}
}
