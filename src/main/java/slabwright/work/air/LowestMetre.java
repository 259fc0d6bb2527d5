package slabwright.work.air;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;

/**
 * The careful reading of a floor's air: all vapour lies in the lowest metre, and each step is laid
 * as fast as is plausible, at the worst moment of its time.
 */
public final class LowestMetre {
  private static final double SHIFT = ExposureLimit.AveragingPeriod.EIGHT_HOURS.minutes();

  /** Levels this near a limit count as on it, so that rounding lets nobody in. */
  private static final double NEAR = 1 - 1e-9;

  /** More air than any floor gets, m³/min; what needs more has no answer. */
  private static final double MOST_AIR = 1e6;

  private final AirVolume space;
  private final double airflow;
  private final double mixing;
  private final double celsius;

  /**
   * The air over a floor.
   *
   * @param airflow m³/min of fresh air, 0 for a closed room
   * @param mixing the factor K, at least 1
   */
  public LowestMetre(AirVolume space, double airflow, double mixing, double celsius) {
    this.space = space;
    this.airflow = airflow;
    this.mixing = mixing;
    this.celsius = celsius;
  }

  private LowestMetre withAir(double other) {
    return new LowestMetre(space, other, mixing, celsius);
  }

  private double fresh() {
    return airflow / mixing;
  }

  /** Whether any fresh air clears it. */
  public boolean isAired() {
    return airflow > 0;
  }

  /** What a step adds to the air at most; the floor laid is a share of the step's. */
  private AirLevel added(VapourStep step, double share) {
    double minutes = step.fastest() * share;
    double plateau = WellMixedRoom.plateau(1, minutes, space.volume(), fresh());
    return emission(step).times(plateau * space.layerFactor());
  }

  /** What a step adds to the air at most, in clean air its peak. */
  public AirLevel added(VapourStep step) {
    return added(step, 1);
  }

  private AirLevel emission(VapourStep step) {
    return FreshAirNeed.emission(step, celsius);
  }

  /** A level some minutes later, when nothing is laid. */
  public AirLevel after(AirLevel level, double minutes) {
    return level.times(Math.exp(-fresh() / space.volume() * minutes));
  }

  /**
   * A stay's part in the average of a shift, times the 8-hour limit: a step and what lay in the air
   * before it.
   */
  public double shift(AirLevel before, Optional<VapourStep> step, double minutes) {
    double left =
        before.eightHour() * WellMixedRoom.plateau(1, minutes, 1, fresh() / space.volume());
    double laid = step.map(s -> breathed(s, 1)).orElse(0.0);
    return (left + laid) / SHIFT;
  }

  /** Minutes × times the 8-hour limit, breathed by who lays a share of a step in clean air. */
  private double breathed(VapourStep step, double share) {
    double rate = emission(step).eightHour() * step.fastest() / step.minutes();
    double minutes = step.minutes() * share;
    return new ConcentrationCurve.CurvePiece(0, 0, rate / space.volume(), fresh() / space.volume())
            .sum(minutes)
        * space.layerFactor();
  }

  /** What keeps a crew from laying a step in clean air; empty when it may. */
  public Optional<EntryLimit> limit(VapourStep step, Optional<BreathingProtection> worn) {
    return EntryRule.limit(
        added(step), shift(AirLevel.CLEAN, Optional.of(step), step.minutes()), worn);
  }

  private boolean bears(VapourStep step, double share, Optional<BreathingProtection> worn) {
    return EntryRule.limit(added(step, share), breathed(step, share) / SHIFT, worn).isEmpty();
  }

  /**
   * How long until people may enter and add something to what is left.
   *
   * @param adding what they add at most; clean where they lay nothing
   * @return minutes, 0 for at once; empty when it never gets there
   */
  public OptionalDouble minutesUntil(
      AirLevel left, AirLevel adding, Optional<BreathingProtection> worn) {
    AirLevel most = EntryRule.most(worn);
    double share = 1;
    share = Math.min(share, room(left.lel(), adding.lel(), most.lel()));
    share = Math.min(share, room(left.shortTerm(), adding.shortTerm(), most.shortTerm()));
    share = Math.min(share, room(left.eightHour(), adding.eightHour(), most.eightHour()));
    share = Math.min(share, room(left.danger(), adding.danger(), most.danger()));
    if (share >= 1) {
      return OptionalDouble.of(0);
    }
    return share <= 0 || fresh() <= 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(-Math.log(share) * space.volume() / fresh());
  }

  /** The share of what is left that may still be there. */
  private static double room(double left, double adding, double most) {
    double free = most * NEAR - adding;
    return left <= 0 ? (free > 0 ? 1 : 0) : free / left;
  }

  /**
   * How many times the step's fastest laying the air bears without end through a shift; 0 without
   * fresh air.
   *
   * @param shiftMinutes a working day
   */
  public double bearableSpeed(
      VapourStep step, Optional<BreathingProtection> worn, double shiftMinutes) {
    if (!isAired()) {
      return 0;
    }
    AirLevel steady = emission(step).times(space.layerFactor() / fresh());
    AirLevel most = EntryRule.most(worn);
    double day = EntryRule.mostShift(worn) * SHIFT / Math.max(SHIFT, shiftMinutes);
    double speed = most.lel() / steady.lel();
    speed = Math.min(speed, over(most.shortTerm(), steady.shortTerm()));
    speed = Math.min(speed, over(most.danger(), steady.danger()));
    return Math.min(speed, over(day, steady.eightHour())) * NEAR;
  }

  private static double over(double most, double steady) {
    return steady > 0 ? most / steady : Double.POSITIVE_INFINITY;
  }

  /** The largest share of the step that may be laid in one go, starting in clean air. */
  public double bearableShare(VapourStep step, Optional<BreathingProtection> worn) {
    return largest(1, share -> bears(step, share, worn));
  }

  /** How often a shift such a share may be laid by the same people. */
  public int sharesPerShift(VapourStep step, double share, Optional<BreathingProtection> worn) {
    double once = breathed(step, share) / SHIFT;
    return (int) Math.min(1000, Math.floor(EntryRule.mostShift(worn) / once + 1e-9));
  }

  /** M³/min with which the crew may lay the step in one go; empty when no fan is enough. */
  public OptionalDouble airNeeded(VapourStep step, Optional<BreathingProtection> worn) {
    double low = 0;
    double high = 1;
    while (high < MOST_AIR && !withAir(high).bears(step, 1, worn)) {
      low = high;
      high *= 2;
    }
    if (high >= MOST_AIR) {
      return OptionalDouble.empty();
    }
    double span = high - low;
    double from = low;
    double less = largest(1, s -> withAir(from + span * (1 - s)).bears(step, 1, worn));
    return OptionalDouble.of(low + span * (1 - less));
  }

  /** The largest number up to {@code most} that fits, when smaller ones always do. */
  private static double largest(double most, DoublePredicate fits) {
    double low = 0;
    double high = most;
    if (fits.test(high)) {
      return high;
    }
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (fits.test(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
