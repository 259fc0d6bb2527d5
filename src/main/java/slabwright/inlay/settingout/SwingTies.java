package slabwright.inlay.settingout;

/**
 * Two tapes swung from known corners; the point is where the arcs cross on the stated side. Only a
 * check: two arcs that cross flat say little, so the point itself is set out square.
 *
 * @param first corner of the baseline
 * @param second corner of the baseline
 * @param fromFirst mm
 * @param fromSecond mm
 * @param side of the baseline, walking from the first corner to the second
 * @param angle between the two tapes at the point, degrees
 * @param error expected, one standard deviation in the worst direction, mm
 */
public record SwingTies(
    KnownCorner first,
    KnownCorner second,
    double fromFirst,
    double fromSecond,
    Hand side,
    double angle,
    double error) {
  /**
   * √5.991: the 95 % point of chi-square with two degrees of freedom. The ellipse of a point in two
   * dimensions grows by it, not by the 1.96 of a single reading.
   */
  static final double CONFIDENCE_95 = 2.4477;

  /** How far off the point may be at 95 %, in the worst direction, mm. */
  public double errorAt95() {
    return CONFIDENCE_95 * error;
  }
}
