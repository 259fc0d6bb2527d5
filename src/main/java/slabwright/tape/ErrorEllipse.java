package slabwright.tape;

/**
 * Where a corner may lie: the ellipse of one standard deviation (39 % of cases; 2.45 times as large
 * for 95 %). It counts from the first corner and the direction of the first wall, which are held.
 *
 * @param major semi-axis in mm
 * @param minor semi-axis in mm
 * @param bearing of the major axis in degrees counter-clockwise from the first wall, 0 to 180
 */
public record ErrorEllipse(double major, double minor, double bearing) {
  /** From the variances of x and y and their covariance, mm². */
  public static ErrorEllipse of(double xx, double yy, double xy) {
    double middle = (xx + yy) / 2;
    double half = Math.hypot((xx - yy) / 2, xy);
    double bearing = Math.toDegrees(Math.atan2(2 * xy, xx - yy) / 2);
    return new ErrorEllipse(
        Math.sqrt(middle + half),
        Math.sqrt(Math.max(0, middle - half)),
        bearing < 0 ? bearing + 180 : bearing);
  }

  ErrorEllipse times(double factor) {
    return new ErrorEllipse(major * factor, minor * factor, bearing);
  }
}
