package slabwright.tape.leastsquares;

/** The distance from a corner to the spot that lies {@code along} mm from a wall's first corner. */
public record WallSpotObservation(
    int corner, int from, int to, double along, double read, double sd) implements Observation {
  @Override
  public double computed(double[] xy) {
    double[] e = reach(xy);
    return Math.hypot(e[0], e[1]);
  }

  /** From the spot to the corner. */
  private double[] reach(double[] xy) {
    double ux = xy[2 * to] - xy[2 * from];
    double uy = xy[2 * to + 1] - xy[2 * from + 1];
    double k = along / Math.max(Math.hypot(ux, uy), 1e-9);
    return new double[] {
      xy[2 * corner] - xy[2 * from] - k * ux, xy[2 * corner + 1] - xy[2 * from + 1] - k * uy
    };
  }

  @Override
  public void slopes(double[] xy, DesignRow row) {
    double[] e = reach(xy);
    double f = Math.max(Math.hypot(e[0], e[1]), 1e-9);
    double ex = e[0] / f;
    double ey = e[1] / f;
    double ux = xy[2 * to] - xy[2 * from];
    double uy = xy[2 * to + 1] - xy[2 * from + 1];
    double d = Math.max(Math.hypot(ux, uy), 1e-9);
    // moving the far corner swings the spot only across the wall, by along / d
    double swing = along * (ux * ey - uy * ex) / (d * d * d);
    row.clear();
    row.add(corner, ex, ey);
    row.add(to, swing * uy, -swing * ux);
    row.add(from, -ex - swing * uy, -ey + swing * ux);
  }
}
