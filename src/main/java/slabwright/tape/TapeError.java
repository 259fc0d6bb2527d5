package slabwright.tape;

import slabwright.units.Length;

/**
 * How far a tape can be trusted: {@code fixed + share · length}, one standard deviation.
 *
 * @param share a fraction, 0.0002 for 0.02 %
 */
public record TapeError(Length fixed, double share) {
  /** 1/8 in and 0.02 %: common practice, no source. */
  public static final TapeError USUAL = new TapeError(new Length(3.175, "1/8\""), 2e-4);

  /** One standard deviation in mm for a length in mm. */
  public double of(double mm) {
    return fixed.mm() + share * Math.abs(mm);
  }
}
