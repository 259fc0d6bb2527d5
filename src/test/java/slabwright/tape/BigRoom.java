package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import slabwright.tape.Reading.Trust;
import slabwright.tape.leastsquares.DistanceObservation;
import slabwright.tape.leastsquares.TurnObservation;
import slabwright.units.Length;

/** A room of many corners on a wavy ring, with a diagonal from every third corner. */
final class BigRoom {
  private BigRoom() {}

  static TapeRoom of(int n) {
    Random random = new Random(n);
    double[] xy = new double[2 * n];
    for (int i = 0; i < n; i++) {
      double a = 2 * Math.PI * i / n;
      double r = 20_000 + 1500 * Math.sin(9 * a) + 400 * random.nextDouble();
      xy[2 * i] = r * Math.cos(a);
      xy[2 * i + 1] = r * Math.sin(a);
    }
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      readings.add(new Reading.Wall(i, taped(xy, i, next, random), Optional.empty()));
      double turn = new TurnObservation((i + n - 1) % n, i, next, 0, 1).computed(xy);
      double degrees = Math.toDegrees(turn) + 0.5 * random.nextGaussian();
      readings.add(new Reading.Turn(i, degrees, Trust.READ, Optional.empty()));
    }
    for (int i = 0; i < n; i += 3) {
      int across = (i + n / 3 + random.nextInt(n / 3)) % n;
      readings.add(new Reading.Diagonal(i, across, taped(xy, i, across, random), Optional.empty()));
    }
    return TapeRoom.of(n).withReadings(readings);
  }

  private static Length taped(double[] xy, int from, int to, Random random) {
    double mm = new DistanceObservation(from, to, 0, 1).computed(xy);
    return Length.mm(mm + TapeError.USUAL.of(mm) * random.nextGaussian());
  }
}
