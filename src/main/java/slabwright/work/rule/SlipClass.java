package slabwright.work.rule;

import java.util.Optional;
import slabwright.units.Message;

/** Dynamic coefficient of friction by use class, ANSI A326.3-2021. Static figures never compare. */
public enum SlipClass {
  INTERIOR_DRY("ID", 0.42, false),
  INTERIOR_WET("IW", 0.42, true),
  INTERIOR_WET_PLUS("IW+", 0.50, true),
  EXTERIOR_WET("EW", 0.55, true),
  OILS_GREASES("O/G", 0.55, true);

  private final String code;
  private final double minimum;
  private final boolean wet;

  SlipClass(String code, double minimum, boolean wet) {
    this.code = code;
    this.minimum = minimum;
    this.wet = wet;
  }

  public String code() {
    return code;
  }

  /** What the standard calls it. */
  public Message title() {
    return switch (this) {
      case INTERIOR_DRY -> Message.of("work.slip-class.interior-dry");
      case INTERIOR_WET -> Message.of("work.slip-class.interior-wet");
      case INTERIOR_WET_PLUS -> Message.of("work.slip-class.interior-wet-plus");
      case EXTERIOR_WET -> Message.of("work.slip-class.exterior-wet");
      case OILS_GREASES -> Message.of("work.slip-class.oils-greases");
    };
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
        Message.of("work.slip-class.slip"),
        verdict,
        Message.of("work.slip-class.ansi-a", code, title()),
        wet
            ? Message.of("work.slip-class.dcof-wet", minimum)
            : Message.of("work.slip-class.dcof-dry", minimum),
        measured
            .map(m -> Message.of("work.slip-class.measured", m))
            .orElse(Message.of("work.slip-class.not-measured-on-the-finished")),
        Message.of("work.slip-class.measure-on-the-finished-floor"));
  }
}
