package slabwright.inlay.settingout;

/**
 * What can be measured. Lengths in mm, angles in degrees.
 *
 * @param longest tape length
 * @param fixedError one standard deviation of a reading, the part that does not grow
 * @param errorShare the part that grows with the length, as a fraction of it
 * @param leastAngle between two ties at the point; the most is 180° less this
 * @param doorNear a doorway farther than this, along and aside together, is not set out from
 */
public record SettingOutParameters(
    double longest, double fixedError, double errorShare, double leastAngle, double doorNear) {
  /**
   * A 30 m tape good to 3 mm and 0.02 %, angles 30° to 150°, a doorway within 15 m (common
   * practice, no source).
   */
  public static SettingOutParameters usual() {
    return new SettingOutParameters(30_000, 3, 2e-4, 30, 15_000);
  }

  /** One standard deviation in mm of a reading. */
  public double error(double length) {
    return fixedError + errorShare * length;
  }
}
