package slabwright.work.days;

import java.time.Duration;

/**
 * What people breathe on a step, and where its vapour gets to.
 *
 * @param shift its part in the average of a shift, as a multiple of the 8-hour limits inside any
 *     protection that is worn; 0 in clean air, at most 1
 * @param protection the breathing protection worn, by name; empty where none is
 * @param vapour where its own vapour gets to through doorways
 * @param fan how long past its end a fan that it holds still runs, until the air is clear
 */
public record StepAir(double shift, String protection, VapourReach vapour, Duration fan) {
  public static final StepAir CLEAN = new StepAir(0, "", VapourReach.NOWHERE);

  /** With a fan that is free when the step ends. */
  public StepAir(double shift, String protection, VapourReach vapour) {
    this(shift, protection, vapour, Duration.ZERO);
  }

  public StepAir {
    if (!(shift >= 0 && shift <= 1)) {
      throw new IllegalArgumentException("a shift holds at most its limit");
    }
  }

  /** The same with vapour that gets to other floor areas. */
  public StepAir reaching(VapourReach v) {
    return new StepAir(shift, protection, v, fan);
  }
}
