package slabwright.tape.leastsquares;

/**
 * The turn at a corner, from the direction of the wall before it to that of the wall after it;
 * positive to the left. Radians; misfits are taken the short way round.
 */
public record TurnObservation(int before, int at, int after, double read, double sd)
    implements Observation {
  @Override
  public double computed(double[] xy) {
    double ax = xy[2 * at] - xy[2 * before];
    double ay = xy[2 * at + 1] - xy[2 * before + 1];
    double bx = xy[2 * after] - xy[2 * at];
    double by = xy[2 * after + 1] - xy[2 * at + 1];
    return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }

  @Override
  public double misfit(double[] xy) {
    return Math.IEEEremainder(read - computed(xy), 2 * Math.PI);
  }

  @Override
  public void slopes(double[] xy, DesignRow row) {
    double ax = xy[2 * at] - xy[2 * before];
    double ay = xy[2 * at + 1] - xy[2 * before + 1];
    double bx = xy[2 * after] - xy[2 * at];
    double by = xy[2 * after + 1] - xy[2 * at + 1];
    double a2 = Math.max(ax * ax + ay * ay, 1e-9);
    double b2 = Math.max(bx * bx + by * by, 1e-9);
    row.clear();
    row.add(before, -ay / a2, ax / a2);
    row.add(at, ay / a2 + by / b2, -ax / a2 - bx / b2);
    row.add(after, -by / b2, bx / b2);
  }
}
