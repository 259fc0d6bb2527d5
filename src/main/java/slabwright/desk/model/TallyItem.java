package slabwright.desk.model;

/**
 * One figure of the tally.
 *
 * @param value as shown; a dash while it is not known
 */
public record TallyItem(String what, String value, Tone tone) {
  /** How a figure is stressed. */
  public enum Tone {
    PLAIN,
    LOOK,
    CANT,
    UNKNOWN
  }

  public static TallyItem of(String what, String value) {
    return new TallyItem(what, value, Tone.PLAIN);
  }

  public static TallyItem unknown(String what) {
    return new TallyItem(what, "–", Tone.UNKNOWN);
  }
}
