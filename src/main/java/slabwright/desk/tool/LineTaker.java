package slabwright.desk.tool;

import java.util.Optional;
import slabwright.shape.Vec;
import slabwright.units.BareUnit;
import slabwright.units.Message;

/** What draws by touches and typed lines: what it asks for now. */
public interface LineTaker {
  /** One sentence: what to do next. */
  Message prompt();

  default void drag(Touch t) {}

  default void hover(Touch t) {}

  /** What a typed line is for, such as "length"; empty when nothing can be typed now. */
  default Optional<Message> entry() {
    return Optional.empty();
  }

  /** What a typed line may look like now. */
  default Message example() {
    return Message.of("desk.tool.example.length");
  }

  /** Whether a typed line may be a place now; one at the left or below begins with a minus. */
  default boolean takesPlaces() {
    return example().equals(Message.of("desk.tool.example.place"));
  }

  /** The unit of a bare number in a typed line now. */
  default Optional<BareUnit> bare() {
    return Optional.empty();
  }

  /** What a line that is being typed would be taken as; empty while it can't be read. */
  default Optional<String> meaning(String line) {
    return Optional.empty();
  }

  /**
   * An arrow key while the entry line is empty, such as (−1, 0) for left, says which way to go on;
   * false when unused.
   */
  default boolean steer(int right, int up) {
    return false;
  }

  /** The point that a line is being drawn from, for square and parallel snapping. */
  default Optional<Vec> from() {
    return Optional.empty();
  }
}
