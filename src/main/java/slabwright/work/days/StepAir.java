package slabwright.work.days;

import java.time.Duration;

/**
 * What people breathe on a step, where its vapour gets to, and where dust would spoil it.
 *
 * @param shift its part in the average of a shift, as a multiple of the 8-hour limits inside any
 *     protection that is worn; 0 in clean air, at most 1
 * @param protection the breathing protection worn, by name; empty where none is
 * @param vapour where its own vapour gets to through doorways
 * @param fan how long past its end a fan that it holds still runs, until the air is clear
 * @param wet where nobody may raise dust while what it lays is wet
 */
public record StepAir(
    double shift, String protection, VapourReach vapour, Duration fan, WetFilm wet) {
  public static final StepAir CLEAN = new StepAir(0, "", VapourReach.NOWHERE);

  /** With a fan that is free when the step ends, and nothing that stays wet. */
  public StepAir(double shift, String protection, VapourReach vapour) {
    this(shift, protection, vapour, Duration.ZERO, WetFilm.NONE);
  }

  public StepAir {
    if (!(shift >= 0 && shift <= 1)) {
      throw new IllegalArgumentException("a shift holds at most its limit");
    }
  }

  /** The same with vapour that gets to other floor areas. */
  public StepAir reaching(VapourReach v) {
    return new StepAir(shift, protection, v, fan, wet);
  }

  /** The same with what it lays wet for a time. */
  public StepAir wet(WetFilm film) {
    return new StepAir(shift, protection, vapour, fan, film);
  }
}
