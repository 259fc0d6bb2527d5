package slabwright.inlay.artwork.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Vec;

/**
 * A chain of the border between two colours as a clean line: spans between corners, corners where
 * the spans on both sides meet.
 */
final class FittedChain {
  /** Points of a closed edge that are smoothed again beyond its seam. */
  private static final int OVERLAP = 70;

  /** A corner further than this from where the edge turns is not believed, in pixels. */
  private static final double FARTHEST = 2.5;

  /** Points on each side that a corner is first guessed from. */
  private static final int FEW = 4;

  private static final double FARTHEST_TIP = 7;

  /** Half the width, in pixels, at which a tip running out is lost between the pixels. */
  private static final double TIP = 0.6;

  private static final double NEAR_CORNER = 0.9;
  private static final double NEAR_MEETING = 1.3;
  private static final int ROUNDS = 2;

  /** Within so many pixels of an end, points that are not clearly before it are left out. */
  private static final double NEAR_END = 4;

  private static final double CLOSE = 0.1;

  private final EdgePoints points;
  private final double noise;
  private final List<Vec> corners = new ArrayList<>();
  private List<EdgeSpan> spans = new ArrayList<>();
  private List<Vec> loop = List.of();

  FittedChain(BoundaryChain chain, EdgePoints points, double noise, double roundness) {
    this.points = points;
    this.noise = noise;
    int[] at = new EdgeCornerFinder(points, noise, roundness).find();
    if (points.closed() && at.length == 0) {
      fitLoop();
    } else {
      int[] last = at.clone();
      for (int k = 0; k < at.length; k++) {
        Vec corner = firstGuess(at, k);
        corners.add(corner);
        // a point that the corner lies behind is the last before it, else the first behind it
        Vec in = point(at[k]).minus(point(at[k] - 1));
        last[k] = corner.minus(point(at[k])).dot(in) > 0 ? at[k] : at[k] - 1;
      }
      fitSpans(chain, at, last);
    }
  }

  private Vec point(int i) {
    int k = Math.floorMod(i, points.size());
    return new Vec(points.x()[k], points.y()[k]);
  }

  /** Where the few points before and behind a corner point to. */
  private Vec firstGuess(int[] at, int k) {
    int n = points.size();
    int i = at[k];
    int room = FEW;
    if (points.closed()) {
      int others = at.length == 1 ? n : Math.floorMod(at[(k + 1) % at.length] - i, n);
      int back = at.length == 1 ? n : Math.floorMod(i - at[(k + at.length - 1) % at.length], n);
      room = Math.min(room, Math.min(others, back) - 1);
    } else {
      int after = (k + 1 < at.length ? at[k + 1] : n) - i - 1;
      int before = i - (k > 0 ? at[k - 1] : -1) - 1;
      room = Math.min(room, Math.min(after, before));
    }
    if (room < 2) {
      return point(i);
    }
    double[] x = new double[2 * room];
    double[] y = new double[2 * room];
    for (int j = 0; j < room; j++) {
      x[j] = point(i - room + j).x();
      y[j] = point(i - room + j).y();
      x[room + j] = point(i + 1 + j).x();
      y[room + j] = point(i + 1 + j).y();
    }
    Vec meeting = EdgeLine.of(x, y, 0, room).meets(EdgeLine.of(x, y, room, 2 * room));
    return meeting.distanceTo(point(i)) <= FARTHEST ? meeting : point(i);
  }

  private void fitLoop() {
    int n = points.size();
    int overlap = Math.min(n, OVERLAP);
    List<Vec> unrolled = new ArrayList<>();
    for (int i = -overlap; i < n + overlap; i++) {
      unrolled.add(point(i));
    }
    List<Vec> line = new EdgeSpan(unrolled, noise).line(overlap, overlap + n);
    loop = line.subList(0, line.size() - 1);
  }

  private void fitSpans(BoundaryChain chain, int[] at, int[] lastBefore) {
    boolean closed = points.closed();
    int last = chain.steps();
    Vec first = new Vec(chain.x()[0], chain.y()[0]);
    Vec end = new Vec(chain.x()[last], chain.y()[last]);
    for (int round = 0; round < ROUNDS; round++) {
      spans = new ArrayList<>();
      int count = closed ? at.length : at.length + 1;
      for (int k = 0; k < count; k++) {
        boolean fromCorner = closed || k > 0;
        boolean toCorner = closed || k < at.length;
        int cornerBefore = closed ? k : k - 1;
        int cornerBehind = closed ? (k + 1) % at.length : k;
        int from = fromCorner ? lastBefore[cornerBefore] + 1 : 0;
        int to = toCorner ? lastBefore[cornerBehind] : points.size() - 1;
        to = closed && to < from ? to + points.size() : to;
        List<Vec> run = new ArrayList<>();
        for (int i = from; i <= to; i++) {
          run.add(point(i));
        }
        Vec a = fromCorner ? corners.get(cornerBefore) : first;
        Vec b = toCorner ? corners.get(cornerBehind) : end;
        spans.add(
            new EdgeSpan(
                clear(
                    run,
                    a,
                    fromCorner ? NEAR_CORNER : NEAR_MEETING,
                    b,
                    toCorner ? NEAR_CORNER : NEAR_MEETING),
                noise));
      }
      placeCorners(at);
    }
  }

  /** The points of a run that are clear of its two ends, or all where too few are. */
  private static List<Vec> clear(List<Vec> run, Vec a, double nearA, Vec b, double nearB) {
    List<Vec> kept = new ArrayList<>();
    for (Vec p : run) {
      if (p.distanceTo(a) >= nearA && p.distanceTo(b) >= nearB) {
        kept.add(p);
      }
    }
    if (kept.size() >= 2) {
      return kept;
    }
    return run.size() >= 2 ? run : List.of(a, b.equals(a) ? a.plus(new Vec(1e-3, 0)) : b);
  }

  private void placeCorners(int[] at) {
    for (int k = 0; k < at.length; k++) {
      EdgeSpan before = spans.get(points.closed() ? (k + at.length - 1) % at.length : k);
      EdgeSpan behind = spans.get(points.closed() ? k : k + 1);
      EdgeLine in = before.end(true);
      EdgeLine out = behind.end(false);
      Vec meeting = in.meets(out);
      Vec turn = point(at[k]);
      double far = Math.min(FARTHEST_TIP, Math.max(FARTHEST, TIP / in.sineOfHalf(out)));
      corners.set(k, meeting.distanceTo(turn) <= far ? meeting : turn);
    }
  }

  /** The line in which an open chain ends, directed outwards; empty for a loop. */
  Optional<EdgeLine> end(boolean last) {
    return points.closed() || spans.isEmpty()
        ? Optional.empty()
        : Optional.of(spans.get(last ? spans.size() - 1 : 0).end(last));
  }

  /**
   * The clean line, its first point not repeated when it is closed.
   *
   * @param first where an open chain starts
   * @param end where an open chain ends
   */
  List<Vec> line(Vec first, Vec end) {
    if (!loop.isEmpty()) {
      return loop;
    }
    List<Vec> out = new ArrayList<>();
    int n = spans.size();
    for (int k = 0; k < n; k++) {
      boolean closed = points.closed();
      Vec from = closed ? corners.get(k) : k == 0 ? first : corners.get(k - 1);
      Vec to = closed ? corners.get((k + 1) % n) : k == n - 1 ? end : corners.get(k);
      out.add(from);
      addBetween(spans.get(k), from, to, out);
    }
    if (!points.closed()) {
      out.add(end);
    }
    return out;
  }

  /** The span's points that lie between its two ends, not beyond them. */
  private static void addBetween(EdgeSpan span, Vec from, Vec to, List<Vec> out) {
    Vec inward = span.end(false).along().times(-1);
    Vec outward = span.end(true).along();
    for (Vec p : span.line()) {
      boolean behind = p.distanceTo(from) < NEAR_END && p.minus(from).dot(inward) <= CLOSE;
      boolean beyond = p.distanceTo(to) < NEAR_END && to.minus(p).dot(outward) <= CLOSE;
      if (!behind && !beyond) {
        out.add(p);
      }
    }
  }
}
