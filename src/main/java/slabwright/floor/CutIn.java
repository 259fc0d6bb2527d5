package slabwright.floor;

import java.util.Set;
import slabwright.site.EdgeClass;

/**
 * Which edges a product is cut in along. Doorways and open edges are the ones that differ (common
 * practice, no source); the shop book's hours take the usual way.
 */
public enum CutIn {
  /** What is rolled out over doorways and open edges. */
  USUAL("usual: doorways and open edges rolled over"),
  /** A stain or dye whose colour stops at the doors. */
  STAIN("stain or dye that stops at the doors"),
  /** A sealer that is brushed along every edge. */
  SEALER("sealer brushed along every edge");

  private final String words;

  CutIn(String words) {
    this.words = words;
  }

  public String words() {
    return words;
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
