package slabwright.desk.tool;

import java.util.Optional;
import slabwright.site.MarkType;
import slabwright.units.Message;

/** Where a tool stands in the palette: with others whose marks lie in the same way. */
public enum ToolGroup {
  TOP,
  IN_FLOOR,
  LINES,
  ON_FLOOR,
  PLACES;

  /** The caption over its tools; empty for those that need none. */
  public Optional<Message> words() {
    return switch (this) {
      case TOP -> Optional.empty();
      case IN_FLOOR -> Optional.of(Message.of("desk.tool.group.in-floor"));
      case LINES -> Optional.of(Message.of("desk.tool.group.lines"));
      case ON_FLOOR -> Optional.of(Message.of("desk.tool.group.on-floor"));
      case PLACES -> Optional.of(Message.of("desk.tool.group.places"));
    };
  }

  /** The shelf of the tool that draws such marks. */
  static ToolGroup of(MarkType marks) {
    return switch (marks) {
      case TRENCH, PATCH, RESIDUE, SPALL, DRAIN_OR_BOX -> IN_FLOOR;
      case JOINT, CRACK, LEVEL_CHANGE -> LINES;
      case ISLAND, BOOTH, COLUMN, TOP_OR_STEP, MASKED_TRIM -> ON_FLOOR;
      case POWER_POINT, DETECTOR, IGNITION_SOURCE, AIR_OUTLET -> PLACES;
    };
  }
}
