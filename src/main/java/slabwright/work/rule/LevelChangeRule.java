package slabwright.work.rule;

import slabwright.units.Message;

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
        Message.of("work.level-change-rule.change-in-level", name),
        verdict,
        Message.of("work.level-change-rule.ada-standards"),
        Message.of("work.level-change-rule.in-upright-to-in-bevelled"),
        Message.of("work.level-change-rule.inches", height / 25.4),
        switch (verdict) {
          case FINE, UNKNOWN -> RuleNote.NOTHING;
          case LOOK -> Message.of("work.level-change-rule.bevel-it");
          case NOT_MET -> Message.of("work.level-change-rule.more-than-a-bevel-may");
        });
  }
}
