package slabwright.desk.model.compute;

import slabwright.units.Message;

/**
 * One figure of the tally.
 *
 * @param value as shown; a dash while it is not known
 */
public record TallyItem(Message what, String value, Emphasis tone) {
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
