package slabwright.tape.leastsquares;

/** The distance between two corners: a wall, a chord or a diagonal. */
public record DistanceObservation(int from, int to, double read, double sd) implements Observation {
  @Override
  public double computed(double[] xy) {
    return Math.hypot(xy[2 * to] - xy[2 * from], xy[2 * to + 1] - xy[2 * from + 1]);
  }

  @Override
  public void slopes(double[] xy, DesignRow row) {
    double d = Math.max(computed(xy), 1e-9);
    double ux = (xy[2 * to] - xy[2 * from]) / d;
    double uy = (xy[2 * to + 1] - xy[2 * from + 1]) / d;
    row.clear();
    row.add(from, -ux, -uy);
    row.add(to, ux, uy);
  }
}
