package slabwright.work.air;

import slabwright.units.Message;

/**
 * A limit for what people breathe.
 *
 * @param name as its publisher calls it
 * @param share of the air, 250 ppm = 250e-6
 */
public record ExposureLimit(Message name, AveragingPeriod span, double share) {
  /** Over which time it is meant. */
  public enum AveragingPeriod {
    EIGHT_HOURS(480),
    FIFTEEN_MINUTES(15),
    /** Immediately dangerous: at no time. */
    DANGER(0);

    private final int minutes;

    AveragingPeriod(int minutes) {
      this.minutes = minutes;
    }

    public int minutes() {
      return minutes;
    }
  }

  static ExposureLimit ppm(Message name, AveragingPeriod span, double ppm) {
    return new ExposureLimit(name, span, ppm * 1e-6);
  }
}
