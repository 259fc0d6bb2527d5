package slabwright.work.step;

import java.util.Locale;

/** The kinds of tool a shop book may list; a step holds tools by kind. */
public enum ToolKind {
  FLOOR_GRINDER,
  HAND_GRINDER,
  VACUUM,
  FAN,
  SPRAYER;

  /** The word in the shop book. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
