package slabwright.work.step;

import java.util.Locale;
import slabwright.units.Message;

/** The kinds of tool a shop book may list; a step holds tools by kind. */
public enum ToolKind {
  FLOOR_GRINDER,
  HAND_GRINDER,
  VACUUM,
  FAN,
  SPRAYER,
  /** What blows the sprayer of a mist coat. */
  COMPRESSOR;

  /**
   * Whether its motor, its switch or what it does sparks. A sprayer counts, for most have a motor;
   * none is taken as made for an explosive atmosphere.
   */
  public boolean sparks() {
    return switch (this) {
      case FLOOR_GRINDER, HAND_GRINDER, VACUUM, FAN, SPRAYER, COMPRESSOR -> true;
    };
  }

  /** What people call it. */
  public Message label() {
    return switch (this) {
      case FLOOR_GRINDER -> Message.of("work.tool-kind.floor-grinder");
      case HAND_GRINDER -> Message.of("work.tool-kind.hand-grinder");
      case VACUUM -> Message.of("work.tool-kind.vacuum");
      case FAN -> Message.of("work.tool-kind.fan");
      case SPRAYER -> Message.of("work.tool-kind.sprayer");
      case COMPRESSOR -> Message.of("work.tool-kind.compressor");
    };
  }

  /** The word in the shop book. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
