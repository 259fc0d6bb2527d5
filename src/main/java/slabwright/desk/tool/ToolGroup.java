package slabwright.desk.tool;

import slabwright.site.MarkType;

/** Where a tool stands in the palette: with others whose marks lie in the same way. */
public enum ToolGroup {
  TOP(""),
  IN_FLOOR("In the floor"),
  LINES("Lines"),
  ON_FLOOR("On the floor"),
  PLACES("Places");

  private final String words;

  ToolGroup(String words) {
    this.words = words;
  }

  /** The caption over its tools; empty for those that need none. */
  public String words() {
    return words;
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
