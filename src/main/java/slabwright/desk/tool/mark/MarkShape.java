package slabwright.desk.tool.mark;

import java.util.List;
import slabwright.site.MarkType;
import slabwright.units.Message;

/** Ways to draw a mark. */
enum MarkShape {
  PATH,
  LINE,
  CORNERS,
  RECTANGLE,
  ROUND,
  ROUND_ENDED,
  FREEHAND,
  WALL_TO_WALL,
  ROW,
  POINT;

  Message word() {
    return switch (this) {
      case PATH -> Message.of("desk.tool.shape.path");
      case LINE -> Message.of("desk.tool.shape.line");
      case CORNERS -> Message.of("desk.tool.shape.corners");
      case RECTANGLE -> Message.of("desk.tool.shape.rectangle");
      case ROUND -> Message.of("desk.tool.shape.round");
      case ROUND_ENDED -> Message.of("desk.tool.shape.round-ended");
      case FREEHAND -> Message.of("desk.tool.shape.freehand");
      case WALL_TO_WALL -> Message.of("desk.tool.shape.wall-to-wall");
      case ROW -> Message.of("desk.tool.shape.row");
      case POINT -> Message.of("desk.tool.shape.point");
    };
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
