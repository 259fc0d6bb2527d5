package slabwright.inlay.artwork;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.shape.curve.Bezier;
import slabwright.units.Message;

/** Paths to rings of points. Open subpaths are closed, as filling does. */
public final class PathFlattener {
  private static final int MOST_POINTS = 4_000_000;
  private static final double FARTHEST = 1e9;

  private final List<List<Vec>> chains = new ArrayList<>();
  private List<Vec> points = new ArrayList<>();
  private int count;

  private PathFlattener() {}

  /** The path's rings after {@code at}; the tolerance is in the frame that {@code at} leads to. */
  public static List<Ring> rings(Path2D path, AffineTransform at, double tolerance) {
    return chains(path, at, tolerance).stream()
        .filter(chain -> chain.size() >= 3)
        .map(Ring::new)
        .toList();
  }

  /** The path's subpaths as chains of at least two points. */
  public static List<List<Vec>> chains(Path2D path, AffineTransform at, double tolerance) {
    PathFlattener f = new PathFlattener();
    double[] c = new double[6];
    for (PathIterator it = path.getPathIterator(at); !it.isDone(); it.next()) {
      switch (it.currentSegment(c)) {
        case PathIterator.SEG_MOVETO -> {
          f.finish();
          f.add(new Vec(c[0], c[1]));
        }
        case PathIterator.SEG_LINETO -> f.add(new Vec(c[0], c[1]));
        case PathIterator.SEG_QUADTO ->
            Bezier.quadratic(f.last(), new Vec(c[0], c[1]), new Vec(c[2], c[3]), tolerance)
                .forEach(f::add);
        case PathIterator.SEG_CUBICTO ->
            Bezier.cubic(
                    f.last(),
                    new Vec(c[0], c[1]),
                    new Vec(c[2], c[3]),
                    new Vec(c[4], c[5]),
                    tolerance)
                .forEach(f::add);
        default -> f.close();
      }
    }
    f.finish();
    return f.chains;
  }

  private void close() {
    Vec start = points.isEmpty() ? Vec.ZERO : points.get(0);
    finish();
    // what follows a closed subpath without a move starts at its first point
    points.add(start);
  }

  private void finish() {
    if (points.size() >= 2) {
      chains.add(points);
    }
    points = new ArrayList<>();
  }

  private void add(Vec p) {
    if (!(Math.abs(p.x()) < FARTHEST) || !(Math.abs(p.y()) < FARTHEST)) {
      throw new RefusedArtworkException(
          Reason.ABSURD_SIZE, Message.of("inlay.path-flattener.far-out"));
    }
    if (++count > MOST_POINTS) {
      throw new RefusedArtworkException(
          Reason.TOO_LARGE, Message.of("inlay.path-flattener.too-many-points"));
    }
    points.add(p);
  }

  private Vec last() {
    return points.isEmpty() ? Vec.ZERO : points.get(points.size() - 1);
  }
}
