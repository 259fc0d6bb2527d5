package slabwright.site;

import java.util.Locale;
import slabwright.units.Message;

/** What the free floor meets along an edge, in the order sheets list them. */
public enum EdgeClass {
  WALL,
  OPEN_EDGE,
  KERB,
  DOORWAY,
  ISLAND,
  BOOTH,
  COLUMN,
  TOP_OR_STEP;

  /** The word of the reports that programs read. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** What people call it. */
  public Message label() {
    return switch (this) {
      case WALL -> Message.of("site.edge-class.wall");
      case OPEN_EDGE -> Message.of("site.edge-class.open-edge");
      case KERB -> Message.of("site.edge-class.kerb");
      case DOORWAY -> Message.of("site.edge-class.doorway");
      case ISLAND -> Message.of("site.edge-class.island");
      case BOOTH -> Message.of("site.edge-class.booth");
      case COLUMN -> Message.of("site.edge-class.column");
      case TOP_OR_STEP -> Message.of("site.edge-class.top-or-step");
    };
  }
}
