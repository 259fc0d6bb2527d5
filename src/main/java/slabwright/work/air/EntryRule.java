package slabwright.work.air;

import java.util.Optional;

/**
 * Who may be in air with vapour in it, on the careful reading. Nobody at a tenth of the lower
 * explosive limit or above (a hazardous atmosphere, 29 CFR 1926.1202) or where it is immediately
 * dangerous. Without named breathing protection only below the lowest 15-minute limit and within
 * the shift's 8-hour average; with it up to its assigned factor times the 8-hour limit.
 */
public final class EntryRule {
  private EntryRule() {}

  /**
   * The first limit that keeps a person out; empty when the person may be there.
   *
   * @param level highest of the stay
   * @param shift average of the person's whole shift, this stay included, as a multiple of the
   *     8-hour limit, outside of any mask
   * @param worn breathing protection that is named
   */
  public static Optional<EntryLimit> limit(
      AirLevel level, double shift, Optional<BreathingProtection> worn) {
    AirLevel most = most(worn);
    if (level.lel() >= most.lel()) {
      return Optional.of(EntryLimit.TENTH_OF_LEL);
    }
    if (level.danger() >= most.danger()) {
      return Optional.of(EntryLimit.DANGER);
    }
    if (level.eightHour() > most.eightHour()) {
      return Optional.of(EntryLimit.PROTECTION_FACTOR);
    }
    if (level.shortTerm() >= most.shortTerm()) {
      return Optional.of(EntryLimit.FIFTEEN_MINUTES);
    }
    return shift > mostShift(worn) ? Optional.of(EntryLimit.EIGHT_HOURS) : Optional.empty();
  }

  /** What must not be reached; without end where the rule has no such limit. */
  static AirLevel most(Optional<BreathingProtection> worn) {
    double factor = worn.map(BreathingProtection::factor).orElse(Double.POSITIVE_INFINITY);
    return new AirLevel(
        AirFigures.HAZARDOUS_SHARE, worn.isPresent() ? Double.POSITIVE_INFINITY : 1, factor, 1);
  }

  /** The average of a shift that must not be passed, times the 8-hour limit. */
  static double mostShift(Optional<BreathingProtection> worn) {
    return worn.map(BreathingProtection::factor).orElse(1.0);
  }
}
