package slabwright.desk.cards.inlay;

import slabwright.units.UnitSystem;

/** How far one press of an arrow key moves what is picked. */
public final class NudgeStep {
  private NudgeStep() {}

  /**
   * One step, mm.
   *
   * @param coarse a foot or 100 mm instead of an inch or 10 mm
   */
  public static double mm(UnitSystem units, boolean coarse) {
    boolean metric = units == UnitSystem.METRIC;
    return metric ? (coarse ? 100 : 10) : (coarse ? 304.8 : 25.4);
  }
}
