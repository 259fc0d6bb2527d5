package slabwright.desk.shell;

import slabwright.units.Message;

/**
 * One figure of the tally.
 *
 * @param value as shown; a dash while it is not known
 * @param isTrue whether it is of what is shown, else of the plan a moment ago
 */
public record TallyItem(Message what, String value, Emphasis tone, boolean isTrue) {
  /** A figure of what is shown. */
  public TallyItem(Message what, String value, Emphasis tone) {
    this(what, value, tone, true);
  }

  /** The same while it is of the plan a moment ago, unless it holds now. */
  public TallyItem trueIf(boolean now) {
    return new TallyItem(what, value, tone, now || tone == Emphasis.UNKNOWN);
  }

  /** How a figure is stressed. */
  public enum Emphasis {
    PLAIN,
    LOOK,
    CANT,
    UNKNOWN
  }

  public static TallyItem of(Message what, String value) {
    return new TallyItem(what, value, Emphasis.PLAIN);
  }

  public static TallyItem unknown(Message what) {
    return new TallyItem(what, "–", Emphasis.UNKNOWN);
  }
}
