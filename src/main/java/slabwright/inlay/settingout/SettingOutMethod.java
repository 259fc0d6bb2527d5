package slabwright.inlay.settingout;

/** How one point is found on the floor. */
public sealed interface SettingOutMethod {
  /**
   * Swing two tapes from known corners; the point is where the arcs cross on the stated side.
   *
   * @param first corner of the baseline
   * @param second corner of the baseline
   * @param fromFirst mm
   * @param fromSecond mm
   * @param side of the baseline, walking from the first corner to the second
   * @param angle between the two tapes at the point, degrees
   * @param error expected, one standard deviation in the worst direction, mm
   */
  record SwingTies(
      KnownCorner first,
      KnownCorner second,
      double fromFirst,
      double fromSecond,
      Hand side,
      double angle,
      double error)
      implements SettingOutMethod {}

  /**
   * Measure along the line between two corners, then square off it; used where no two ties cross
   * well.
   *
   * @param along mm from the first corner towards the second
   * @param out mm square off the line
   * @param side the side to go to, walking from the first corner to the second
   * @param error expected, one standard deviation in the worst direction, mm
   */
  record Offset(
      KnownCorner first, KnownCorner second, double along, double out, Hand side, double error)
      implements SettingOutMethod {}

  /** Neither works from the known corners: add a corner that can be seen from there. */
  record None() implements SettingOutMethod {}

  /** Left or right of a line as one walks along it. */
  enum Hand {
    LEFT,
    RIGHT
  }
}
