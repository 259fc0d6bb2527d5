package slabwright.inlay.artwork.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.shape.Vec;

/**
 * All borders between colours as clean lines, each once for both its sides, in pixels from the
 * picture's top left.
 */
final class PictureTrace {
  private static final double NOISE_LEAST = 0.01;
  private static final double NOISE_MOST = 0.6;
  private static final double NOISE_LENGTH = 9;
  private static final double MAD = 1.4826;
  private static final int ENOUGH = 12;
  private static final double FARTHEST_MEETING = 2;
  private static final double PULL = 0.05;
  private static final double ALL_BUT_FEW = 0.95;
  private static final double NOISE_FACTOR = 2;

  private final LabelMap map;
  private final List<BoundaryChain> chains;
  private final Map<Long, Vec> meetings = new HashMap<>();
  private final List<List<Vec>> lines = new ArrayList<>();
  private final double noise;
  private final double doubt;

  PictureTrace(Pixels pixels, LabelMap map, double roundness) {
    this.map = map;
    this.chains = BoundaryTracer.chains(map, pixels);
    EdgeSampler sampler = new EdgeSampler(pixels, map);
    List<Optional<EdgePoints>> points = new ArrayList<>();
    for (BoundaryChain c : chains) {
      points.add(c.onRim() ? Optional.empty() : Optional.of(sampler.sample(c)));
    }
    this.noise = noise(points);
    this.doubt = doubt(points);
    List<Optional<FittedChain>> fitted = new ArrayList<>();
    for (int i = 0; i < chains.size(); i++) {
      BoundaryChain c = chains.get(i);
      fitted.add(points.get(i).map(p -> new FittedChain(c, p, noise, roundness)));
    }
    placeMeetings(fitted);
    for (int i = 0; i < chains.size(); i++) {
      lines.add(line(chains.get(i), fitted.get(i)));
    }
  }

  List<BoundaryChain> chains() {
    return chains;
  }

  /** The clean line of each chain; a closed one's first point is not repeated. */
  List<List<Vec>> lines() {
    return lines;
  }

  /** Root mean square stray of the points that edges were made of, in pixels. */
  double noise() {
    return noise;
  }

  /** What 95 % of the edges' points are off at most, in pixels, as far as the picture tells. */
  double doubt() {
    return doubt;
  }

  private double doubt(List<Optional<EdgePoints>> all) {
    double[] near =
        all.stream()
            .flatMapToDouble(p -> p.stream().flatMapToDouble(e -> Arrays.stream(e.doubt())))
            .sorted()
            .toArray();
    double most = near.length == 0 ? 0 : near[(int) (near.length * ALL_BUT_FEW)];
    return most + NOISE_FACTOR * noise;
  }

  private static double noise(List<Optional<EdgePoints>> all) {
    List<double[]> off = new ArrayList<>();
    for (Optional<EdgePoints> p : all) {
      p.filter(e -> e.size() >= ENOUGH).ifPresent(e -> off.add(strays(e)));
    }
    double[] sorted = off.stream().flatMapToDouble(Arrays::stream).sorted().toArray();
    double median = sorted.length == 0 ? 0 : sorted[sorted.length / 2];
    return Math.max(NOISE_LEAST, Math.min(NOISE_MOST, MAD * median));
  }

  private static double[] strays(EdgePoints e) {
    double[] u = e.x().clone();
    double[] v = e.y().clone();
    double[] t = e.s();
    double[] ones = new double[t.length];
    Arrays.fill(ones, 1);
    double[] price = new double[t.length];
    Arrays.fill(price, Math.pow(NOISE_LENGTH / (2 * Math.PI), 6));
    new BandedSmoother(t, ones).smooth(price, u, v);
    double[] off = new double[t.length];
    for (int i = 1; i + 1 < off.length; i++) {
      Vec along = new Vec(u[i + 1] - u[i - 1], v[i + 1] - v[i - 1]).unit();
      off[i] = Math.abs(along.cross(new Vec(e.x()[i] - u[i], e.y()[i] - v[i])));
    }
    return off;
  }

  private long key(int x, int y) {
    return (long) y * (map.width() + 1) + x;
  }

  private void placeMeetings(List<Optional<FittedChain>> fitted) {
    Map<Long, List<EdgeLine>> ends = new HashMap<>();
    for (int i = 0; i < chains.size(); i++) {
      BoundaryChain c = chains.get(i);
      if (!c.closed()) {
        int n = c.steps();
        List<EdgeLine> first =
            ends.computeIfAbsent(key(c.x()[0], c.y()[0]), k -> new ArrayList<>());
        List<EdgeLine> last = ends.computeIfAbsent(key(c.x()[n], c.y()[n]), k -> new ArrayList<>());
        fitted.get(i).flatMap(f -> f.end(false)).ifPresent(first::add);
        fitted.get(i).flatMap(f -> f.end(true)).ifPresent(last::add);
      }
    }
    ends.forEach((key, lines) -> meetings.put(key, meeting(key, lines)));
  }

  /** The point nearest to all lines that end at a meeting; on the rim it stays on the rim. */
  private Vec meeting(long key, List<EdgeLine> ends) {
    double gx = key % (map.width() + 1);
    double gy = Math.floorDiv(key, (long) map.width() + 1);
    double xx = PULL;
    double xy = 0;
    double yy = PULL;
    double bx = PULL * gx;
    double by = PULL * gy;
    for (EdgeLine l : ends) {
      Vec n = l.along().left();
      double d = n.dot(l.middle());
      xx += n.x() * n.x();
      xy += n.x() * n.y();
      yy += n.y() * n.y();
      bx += n.x() * d;
      by += n.y() * d;
    }
    boolean fixX = gx == 0 || gx == map.width();
    boolean fixY = gy == 0 || gy == map.height();
    double det = xx * yy - xy * xy;
    double x = fixX ? gx : fixY ? (bx - xy * gy) / xx : (bx * yy - by * xy) / det;
    double y = fixY ? gy : fixX ? (by - xy * gx) / yy : (xx * by - xy * bx) / det;
    Vec grid = new Vec(gx, gy);
    Vec p = new Vec(x, y);
    return p.distanceTo(grid) <= FARTHEST_MEETING ? p : grid;
  }

  private List<Vec> line(BoundaryChain c, Optional<FittedChain> fitted) {
    int n = c.steps();
    Vec first = c.closed() ? Vec.ZERO : meetings.get(key(c.x()[0], c.y()[0]));
    Vec last = c.closed() ? Vec.ZERO : meetings.get(key(c.x()[n], c.y()[n]));
    if (fitted.isPresent()) {
      return LineThinning.thin(
          LineUntangling.untangled(fitted.get().line(first, last), c.closed()), c.closed());
    }
    List<Vec> rim = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      boolean bend = i == 0 || c.direction(i) != c.direction(i - 1);
      if (bend) {
        rim.add(i == 0 && !c.closed() ? first : new Vec(c.x()[i], c.y()[i]));
      }
    }
    if (!c.closed()) {
      rim.add(last);
    }
    return rim;
  }
}
