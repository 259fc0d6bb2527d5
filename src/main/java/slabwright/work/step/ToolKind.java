package slabwright.work.step;

import java.util.Locale;

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

  /** The word in the shop book. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
