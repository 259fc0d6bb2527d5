package slabwright.work.rule;

/**
 * Changes in level along a way for everyone (ADA Standards 303): up to 1/4 in upright, from 1/4 to
 * 1/2 in bevelled 1:2, above that a ramp.
 */
public final class LevelChangeRule {
  private static final double QUARTER_INCH = 6.35;
  private static final double HALF_INCH = 12.7;

  private LevelChangeRule() {}

  /** A step of a height in mm, up or down. */
  public static RuleNote note(String name, double heightMm) {
    double height = Math.abs(heightMm);
    RuleNote.Verdict verdict =
        height <= QUARTER_INCH
            ? RuleNote.Verdict.FINE
            : height <= HALF_INCH ? RuleNote.Verdict.LOOK : RuleNote.Verdict.NOT_MET;
    return new RuleNote(
        "Change in level, " + name,
        verdict,
        "ADA Standards 303",
        "1/4 in upright, to 1/2 in bevelled 1:2",
        "%.2f in".formatted(height / 25.4),
        switch (verdict) {
          case FINE, UNKNOWN -> "";
          case LOOK -> "Bevel it 1:2.";
          case NOT_MET -> "More than a bevel may bridge: a ramp, or grind it down.";
        });
  }
}
