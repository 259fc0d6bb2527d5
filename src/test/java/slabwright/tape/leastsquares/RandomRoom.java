package slabwright.tape.leastsquares;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import slabwright.shape.Vec;

/** A room drawn at random and its readings with honest errors; the same seed, the same room. */
final class RandomRoom {
  static final double TURN_SD = Math.toRadians(0.5);

  private final Random random;
  private final List<Vec> corners;
  private final List<Observation> readings = new ArrayList<>();

  RandomRoom(long seed) {
    random = new Random(seed);
    corners = random.nextBoolean() ? star(3 + random.nextInt(10)) : stairs(1 + random.nextInt(4));
    read();
  }

  private List<Vec> star(int n) {
    List<Vec> list = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double a = 2 * Math.PI * (i + 0.7 * random.nextDouble()) / n;
      double r = 3000 + 9000 * random.nextDouble();
      list.add(new Vec(r * Math.cos(a), r * Math.sin(a)));
    }
    return list;
  }

  /** A rectangle with steps cut into one corner: right angles only, as most rooms. */
  private List<Vec> stairs(int steps) {
    List<Vec> list = new ArrayList<>(List.of(Vec.ZERO));
    double x = 0;
    List<Vec> back = new ArrayList<>();
    double y = 0;
    for (int i = 0; i < steps; i++) {
      x += side();
      back.add(0, new Vec(x, 0));
    }
    for (Vec step : back) {
      list.add(new Vec(step.x(), y));
      y += side();
      list.add(new Vec(step.x(), y));
    }
    list.add(new Vec(0, y));
    return list;
  }

  private double side() {
    return 1500 + 8000 * random.nextDouble();
  }

  private void read() {
    double[] xy = truth();
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      spread(xy, i, (i + 1) % n);
    }
    for (int i = 0; i < n; i++) {
      TurnObservation exact = new TurnObservation((i + n - 1) % n, i, (i + 1) % n, 0, TURN_SD);
      readings.add(
          new TurnObservation(
              exact.before(), i, exact.after(), noisy(exact.computed(xy), TURN_SD), TURN_SD));
    }
    int diagonals = n == 3 ? 0 : 1 + random.nextInt(2 * n);
    for (int k = 0; k < diagonals; k++) {
      int i = random.nextInt(n);
      spread(xy, i, (i + 2 + random.nextInt(n - 3)) % n);
    }
  }

  private void spread(double[] xy, int from, int to) {
    double d = new DistanceObservation(from, to, 0, 1).computed(xy);
    double sd = 3 + 2e-4 * d;
    readings.add(new DistanceObservation(from, to, noisy(d, sd), sd));
  }

  private double noisy(double value, double sd) {
    return value + sd * random.nextGaussian();
  }

  /** Corners with the first at the origin and the first wall along x. */
  double[] truth() {
    Vec first = corners.get(1).minus(corners.get(0)).unit();
    double[] xy = new double[2 * corners.size()];
    for (int i = 0; i < corners.size(); i++) {
      Vec p = corners.get(i).minus(corners.get(0));
      xy[2 * i] = p.dot(first);
      xy[2 * i + 1] = first.cross(p);
    }
    return xy;
  }

  int size() {
    return corners.size();
  }

  List<Observation> readings() {
    return List.copyOf(readings);
  }

  Random random() {
    return random;
  }

  double[] nothingAbout() {
    double[] about = new double[corners.size()];
    Arrays.fill(about, Double.NaN);
    return about;
  }
}
