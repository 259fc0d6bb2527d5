package slabwright.desk.shell;

import java.util.Optional;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Stage;
import slabwright.units.Message;

/**
 * Something that the plan does not say yet.
 *
 * @param area id of the floor area it is asked of; empty for the whole site
 * @param item what has to be picked to see its field
 * @param field id of the field that answers it; empty where nothing but drawing does
 */
public record OpenQuestion(
    Holds holds,
    Stage stage,
    Optional<String> area,
    Optional<PlanItem> item,
    String field,
    Message what) {
  /** What waits for the answer, the gravest first. */
  public enum Holds {
    START,
    MACHINES,
    CUTTING,
    COATS,
    AIR,
    DAYS;

    public Message word() {
      return switch (this) {
        case START -> Message.of("desk.model.open.holds-the-start");
        case MACHINES -> Message.of("desk.model.open.holds-machines");
        case CUTTING -> Message.of("desk.model.open.holds-cutting");
        case COATS -> Message.of("desk.model.open.holds-coats");
        case AIR -> Message.of("desk.model.open.holds-air");
        case DAYS -> Message.of("desk.model.open.holds-days");
      };
    }
  }
}
