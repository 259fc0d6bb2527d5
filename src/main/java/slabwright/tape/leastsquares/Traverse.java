package slabwright.tape.leastsquares;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import slabwright.shape.Vec;

/**
 * The walk round the room as it was read: one length and one turn for each wall, the first wall
 * along x. What was not read is filled in so that the walk closes as well as it can; the result is
 * a start for the adjustment, no more.
 */
public final class Traverse {
  private final double[] length;
  private final double[] turn;
  private boolean complete;

  private Traverse(double[] length, double[] turn) {
    this.length = length;
    this.turn = turn;
  }

  /**
   * The walk that the readings give.
   *
   * @param about rough turns at the corners, NaN where none; used where no turn was read
   * @param without a reading to leave out, or -1
   */
  public static Traverse of(double[] about, List<Observation> observations, int without) {
    int n = about.length;
    double[] length = new double[n];
    Arrays.fill(length, Double.NaN);
    double[] turn = about.clone();
    boolean[] read = new boolean[n];
    for (int i = 0; i < observations.size(); i++) {
      Observation o = observations.get(i);
      if (i == without) {
        continue;
      }
      if (o instanceof DistanceObservation s
          && s.to() == (s.from() + 1) % n
          && Double.isNaN(length[s.from()])) {
        length[s.from()] = s.read();
      } else if (o instanceof TurnObservation b && !read[b.at()]) {
        turn[b.at()] = b.read();
        read[b.at()] = true;
      }
    }
    Traverse walk = new Traverse(length, turn);
    walk.complete = missing(length, 0).isEmpty() && IntStream.range(1, n).allMatch(k -> read[k]);
    walk.fill();
    return walk;
  }

  private void fill() {
    List<Integer> lengths = missing(length, 0);
    List<Integer> turns = missing(turn, 1);
    double usual = Arrays.stream(length).filter(d -> !Double.isNaN(d)).average().orElse(1000);
    lengths.forEach(k -> length[k] = usual);
    fillTurns(turns);
    closeBy(lengths);
  }

  private static List<Integer> missing(double[] values, int from) {
    List<Integer> missing = new ArrayList<>();
    for (int k = from; k < values.length; k++) {
      if (Double.isNaN(values[k])) {
        missing.add(k);
      }
    }
    return missing;
  }

  /** Several missing turns share what is left of the full circle; a single one closes the walk. */
  private void fillTurns(List<Integer> missing) {
    double known = Arrays.stream(turn).filter(t -> !Double.isNaN(t)).sum();
    double share = (Math.copySign(2 * Math.PI, known) - known) / Math.max(1, missing.size());
    missing.forEach(k -> turn[k] = share);
    if (missing.size() == 1) {
      int k = missing.get(0);
      List<Vec> courses = courses();
      Vec before = sum(courses.subList(0, k));
      Vec after = sum(courses.subList(k, courses.size()));
      turn[k] += before.times(-1).angle() - after.angle();
    }
    turn[0] = Double.isNaN(turn[0]) ? 0 : turn[0];
  }

  /** The smallest changes of the lengths that were not read which leave the least gap. */
  private void closeBy(List<Integer> free) {
    List<Vec> courses = courses();
    Vec gap = sum(courses);
    double xx = 1e-9;
    double xy = 0;
    double yy = 1e-9;
    for (int k : free) {
      Vec u = courses.get(k).unit();
      xx += u.x() * u.x();
      xy += u.x() * u.y();
      yy += u.y() * u.y();
    }
    double det = xx * yy - xy * xy;
    Vec pull = new Vec((gap.x() * yy - gap.y() * xy) / det, (gap.y() * xx - gap.x() * xy) / det);
    for (int k : free) {
      double next = length[k] - courses.get(k).unit().dot(pull);
      length[k] = Math.max(next, length[k] / 100);
    }
  }

  /** Whether nothing had to be filled in or taken from a rough turn. */
  public boolean complete() {
    return complete;
  }

  /** The displacements along the walls in walking order. */
  public List<Vec> courses() {
    List<Vec> courses = new ArrayList<>(length.length);
    double direction = 0;
    for (int k = 0; k < length.length; k++) {
      direction += k == 0 ? 0 : turn[k];
      courses.add(new Vec(length[k] * Math.cos(direction), length[k] * Math.sin(direction)));
    }
    return courses;
  }

  /** The corners where the walk put them; the gap lies in the last wall. */
  public double[] corners() {
    return coordinates(courses());
  }

  /** The corners after the compass rule, with the first wall turned back along x. */
  public double[] closedCorners() {
    return coordinates(CompassRule.of(courses()).adjusted());
  }

  private static double[] coordinates(List<Vec> courses) {
    double[] xy = new double[2 * courses.size()];
    Vec first = courses.get(0).unit();
    Vec at = Vec.ZERO;
    for (int k = 0; k < courses.size(); k++) {
      xy[2 * k] = at.dot(first);
      xy[2 * k + 1] = first.cross(at);
      at = at.plus(courses.get(k));
    }
    return xy;
  }

  private static Vec sum(List<Vec> courses) {
    return courses.stream().reduce(Vec.ZERO, Vec::plus);
  }
}
