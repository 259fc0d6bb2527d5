package slabwright.tape.leastsquares;

/**
 * The distance from a point, square on to the line through two corners. The point is the middle of
 * corners {@code p} and {@code q}; both the same for a corner itself.
 */
public record OffsetObservation(int p, int q, int from, int to, double read, double sd)
    implements Observation {
  @Override
  public double computed(double[] xy) {
    return Math.abs(signed(xy));
  }

  /** Positive where the point lies to the left of the line. */
  private double signed(double[] xy) {
    double ux = xy[2 * to] - xy[2 * from];
    double uy = xy[2 * to + 1] - xy[2 * from + 1];
    double d = Math.max(Math.hypot(ux, uy), 1e-9);
    return (ux * away(xy, 1) - uy * away(xy, 0)) / d;
  }

  /** How far the point is from the line's first corner, along x (0) or y (1). */
  private double away(double[] xy, int axis) {
    return (xy[2 * p + axis] + xy[2 * q + axis]) / 2 - xy[2 * from + axis];
  }

  @Override
  public void slopes(double[] xy, DesignRow row) {
    double ux = xy[2 * to] - xy[2 * from];
    double uy = xy[2 * to + 1] - xy[2 * from + 1];
    double d2 = Math.max(ux * ux + uy * uy, 1e-18);
    double side = signed(xy) < 0 ? -1 : 1;
    double nx = -uy / Math.sqrt(d2) * side;
    double ny = ux / Math.sqrt(d2) * side;
    double t = (ux * away(xy, 0) + uy * away(xy, 1)) / d2;
    row.clear();
    row.add(p, nx / 2, ny / 2);
    row.add(q, nx / 2, ny / 2);
    row.add(from, -nx * (1 - t), -ny * (1 - t));
    row.add(to, -nx * t, -ny * t);
  }
}
