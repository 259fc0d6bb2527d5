package slabwright.floor;

import java.util.Set;
import slabwright.site.EdgeClass;
import slabwright.units.Message;

/**
 * Which edges a product is cut in along. Doorways and open edges are the ones that differ (common
 * practice, no source); the shop book's hours take the usual way.
 */
public enum CutIn {
  /** What is rolled out over doorways and open edges. */
  USUAL,
  /** A stain or dye whose colour stops at the doors. */
  STAIN,
  /** A sealer that is brushed along every edge. */
  SEALER;

  public Message words() {
    return switch (this) {
      case USUAL -> Message.of("floor.cut-in.usual");
      case STAIN -> Message.of("floor.cut-in.stain");
      case SEALER -> Message.of("floor.cut-in.sealer");
    };
  }

  /** The classes that are not cut in. */
  public Set<EdgeClass> leftOut() {
    return switch (this) {
      case USUAL -> FloorTakeoff.NOT_CUT_IN;
      case STAIN -> Set.of(EdgeClass.OPEN_EDGE);
      case SEALER -> Set.of();
    };
  }

  /** Length in mm on a floor. */
  public double length(FloorTakeoff takeoff) {
    return takeoff.cutIn(leftOut());
  }
}
