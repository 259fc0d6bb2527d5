package slabwright.work.rule;

import java.util.Optional;

/** Dynamic coefficient of friction by use class, ANSI A326.3-2021. Static figures never compare. */
public enum SlipClass {
  INTERIOR_DRY("ID", "Interior, Dry", 0.42, false),
  INTERIOR_WET("IW", "Interior, Wet", 0.42, true),
  INTERIOR_WET_PLUS("IW+", "Interior, Wet Plus", 0.50, true),
  EXTERIOR_WET("EW", "Exterior, Wet", 0.55, true),
  OILS_GREASES("O/G", "Oils/Greases", 0.55, true);

  private final String code;
  private final String title;
  private final double minimum;
  private final boolean wet;

  SlipClass(String code, String title, double minimum, boolean wet) {
    this.code = code;
    this.title = title;
    this.minimum = minimum;
    this.wet = wet;
  }

  public String code() {
    return code;
  }

  public String title() {
    return title;
  }

  /** The least coefficient where the maker declares none. */
  public double minimum() {
    return minimum;
  }

  /** Whether it is measured wet. */
  public boolean measuredWet() {
    return wet;
  }

  public boolean passes(double dcof) {
    return dcof >= minimum;
  }

  /**
   * The class for a place.
   *
   * @param entrance an entry foyer, which counts as wet
   */
  public static SlipClass of(boolean outdoors, boolean entrance, boolean wet, boolean oil) {
    if (oil) {
      return OILS_GREASES;
    }
    if (outdoors) {
      return EXTERIOR_WET;
    }
    return wet || entrance ? INTERIOR_WET : INTERIOR_DRY;
  }

  /** The class with a measured coefficient, if there is one. */
  public RuleNote note(Optional<Double> measured) {
    RuleNote.Verdict verdict =
        measured
            .map(m -> passes(m) ? RuleNote.Verdict.FINE : RuleNote.Verdict.NOT_MET)
            .orElse(RuleNote.Verdict.UNKNOWN);
    return new RuleNote(
        "Slip",
        verdict,
        "ANSI A326.3-2021, " + code + " (" + title + ")",
        "DCOF %.2f %s".formatted(minimum, wet ? "wet" : "dry"),
        measured.map("measured %.2f"::formatted).orElse("not measured on the finished floor"),
        "Measure on the finished floor; grit in the last coat where it may get wet. The class says"
            + " nothing of ramps or stairs.");
  }
}
