package slabwright.desk.tool.mark;

import java.util.List;
import slabwright.site.MarkType;

/** Ways to draw a mark. */
enum MarkShape {
  PATH("Path"),
  LINE("Line"),
  CORNERS("Corners"),
  RECTANGLE("Rectangle"),
  ROUND("Round"),
  ROUND_ENDED("Round-ended"),
  FREEHAND("Freehand"),
  WALL_TO_WALL("Wall to wall"),
  ROW("Row on a wall"),
  POINT("Point");

  private final String word;

  MarkShape(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }

  /** The ways that suit a kind, the usual one first. */
  static List<MarkShape> of(MarkType type) {
    return switch (type) {
      case TRENCH -> List.of(PATH);
      case PATCH -> List.of(FREEHAND, CORNERS, RECTANGLE, ROUND);
      case RESIDUE -> List.of(CORNERS, RECTANGLE, FREEHAND, WALL_TO_WALL);
      case ISLAND -> List.of(RECTANGLE, ROUND_ENDED, ROUND, CORNERS);
      case BOOTH -> List.of(ROW, RECTANGLE);
      case COLUMN -> List.of(RECTANGLE, ROUND);
      case TOP_OR_STEP -> List.of(RECTANGLE, CORNERS);
      case JOINT, CRACK, LEVEL_CHANGE -> List.of(LINE);
      case SPALL -> List.of(FREEHAND, CORNERS, ROUND);
      case DRAIN_OR_BOX -> List.of(POINT, RECTANGLE, ROUND);
      case MASKED_TRIM -> List.of(LINE, RECTANGLE);
      case POWER_POINT, DETECTOR, IGNITION_SOURCE, AIR_OUTLET -> List.of(POINT);
    };
  }
}
