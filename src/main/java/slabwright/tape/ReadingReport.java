package slabwright.tape;

import slabwright.tape.leastsquares.Reliability;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/**
 * How one reading came out. Millimetres; degrees for a turn.
 *
 * @param index its place among the room's readings
 * @param name what was read
 * @param turn whether the figures are degrees
 * @param read the value read
 * @param adjusted what the adjusted room gives for it
 * @param sd stated standard deviation of the reading
 * @param adjustedSd standard deviation of the adjusted value
 * @param redundancy how much the others check it, 0 (not at all) to 1
 * @param statistic standardised residual; beyond ±3.29 is suspect
 * @param use what became of it
 */
public record ReadingReport(
    int index,
    Message name,
    boolean turn,
    double read,
    double adjusted,
    double sd,
    double adjustedSd,
    double redundancy,
    double statistic,
    Use use) {
  /** Baarda's bound for a risk of 0.1 % and a power of 80 %. */
  private static final double NOTICED = 4.13;

  /** Adjusted less read; a turn the short way round. */
  public double residual() {
    double v = adjusted - read;
    return turn ? Math.IEEEremainder(v, 360) : v;
  }

  /** The residual for people, with its sign where it is short; see {@link LengthFormat#small}. */
  public String shownResidual(UnitSystem units) {
    return turn
        ? QuantityFormat.number(residual(), 2) + "°"
        : LengthFormat.small(residual(), units);
  }

  /** The smallest misreading that would be noticed; infinite where nothing checks the reading. */
  public double noticeable() {
    return redundancy <= Reliability.UNCHECKED
        ? Double.POSITIVE_INFINITY
        : NOTICED * sd / Math.sqrt(redundancy);
  }

  /** What became of a reading. */
  public enum Use {
    USED,
    /** A gross error: the shape is that of the other readings. */
    LEFT_OUT
  }
}
