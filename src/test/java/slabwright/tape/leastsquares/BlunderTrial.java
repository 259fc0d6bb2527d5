package slabwright.tape.leastsquares;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/** One random room with one gross error: what does the search say? */
final class BlunderTrial {
  private final RandomRoom room;
  private final int blunder;
  private final boolean tellable;
  private final Optional<Suspect> named;

  BlunderTrial(long seed) {
    room = new RandomRoom(seed);
    Random random = room.random();
    List<Observation> readings = new ArrayList<>(room.readings());
    blunder = random.nextInt(readings.size());
    readings.set(blunder, spoiled(readings.get(blunder), random));
    tellable = tellableAtTheTrueCorners();
    named = search(readings);
  }

  private static Observation spoiled(Observation o, Random random) {
    if (o instanceof TurnObservation b) {
      return new TurnObservation(b.before(), b.at(), b.after(), spoiledTurn(b, random), b.sd());
    }
    DistanceObservation s = (DistanceObservation) o;
    double by = s.sd() * 20.5 * Math.exp(4 * random.nextDouble());
    boolean shorter = random.nextBoolean() && s.read() - by > 300;
    return new DistanceObservation(s.from(), s.to(), s.read() + (shorter ? -by : by), s.sd());
  }

  /** Either 10° to 40° out, or left and right exchanged. */
  private static double spoiledTurn(TurnObservation b, Random random) {
    double by = (20.5 + 60 * random.nextDouble()) * b.sd();
    boolean exchanged = random.nextInt(4) == 0 && Math.abs(b.read()) > by;
    return exchanged ? -b.read() : b.read() + (random.nextBoolean() ? by : -by);
  }

  private boolean tellableAtTheTrueCorners() {
    Reliability q =
        Reliability.at(room.truth(), Datum.firstWall(room.size()), room.readings()).orElseThrow();
    double[] rho = q.correlations(blunder);
    return q.redundancy(blunder) >= 0.3
        && IntStream.range(0, rho.length).noneMatch(j -> j != blunder && Math.abs(rho[j]) > 0.9);
  }

  private Optional<Suspect> search(List<Observation> readings) {
    double[] about = room.nothingAbout();
    Traverse walk = Traverse.of(about, readings, -1);
    Datum datum = Datum.firstWall(room.size());
    LeastSquaresFitter fitter = new LeastSquaresFitter(datum, readings, () -> false);
    LeastSquaresFit all = fitter.from(walk.corners()).better(fitter.from(walk.closedCorners()));
    return Reliability.at(all.xy(), datum, readings)
        .flatMap(q -> new BlunderSearch(about, readings, () -> false).in(all, q));
  }

  /** Whether the blunder could be told, by the definition and at the true corners. */
  boolean tellable() {
    return tellable;
  }

  /** Whether the search names one reading as the blunder. */
  boolean blames() {
    return named.filter(Suspect::tellable).isPresent();
  }

  boolean likely() {
    return named.filter(Suspect::likely).isPresent();
  }

  boolean right() {
    return named.filter(s -> s.reading() == blunder).isPresent();
  }

  boolean told() {
    return blames() && right();
  }
}
