package slabwright.shape.curve;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Affine;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * A closed outline of straight lines and cubic Bézier curves.
 *
 * @param start where the first piece starts and the last ends
 */
public record CurvedRing(Vec start, List<Piece> pieces) {
  /** What comes next on the way round. */
  public sealed interface Piece {
    /** Where it ends. */
    Vec end();
  }

  /** A straight line. */
  public record Straight(Vec end) implements Piece {}

  /** A cubic curve with its two inner control points. */
  public record Curve(Vec first, Vec second, Vec end) implements Piece {}

  public CurvedRing {
    pieces = List.copyOf(pieces);
  }

  /** The ring itself, every side a straight line. */
  public static CurvedRing straight(Ring ring) {
    List<Piece> pieces = new ArrayList<>();
    List<Vec> p = ring.points();
    for (int i = 1; i <= p.size(); i++) {
      pieces.add(new Straight(p.get(i % p.size())));
    }
    return new CurvedRing(p.get(0), pieces);
  }

  /**
   * Curves and lines that stay within the tolerance of the ring, and the ring of them: fewer pieces
   * than the ring has sides wherever it is a flattened curve. Where no curves fit the sides stay.
   *
   * @param tolerance mm
   */
  public static CurvedRing fitted(Ring ring, double tolerance) {
    return new CurveFitOp(ring, tolerance).run();
  }

  public CurvedRing map(Affine map) {
    return new CurvedRing(
        map.apply(start),
        pieces.stream()
            .map(
                p ->
                    p instanceof Curve c
                        ? new Curve(map.apply(c.first), map.apply(c.second), map.apply(c.end))
                        : (Piece) new Straight(map.apply(p.end())))
            .toList());
  }

  /** How many pieces are curves. */
  public int curves() {
    return (int) pieces.stream().filter(p -> p instanceof Curve).count();
  }

  /** The points of it, curves within the tolerance (mm). */
  public Ring flattened(double tolerance) {
    List<Vec> points = new ArrayList<>();
    Vec here = start;
    points.add(here);
    for (Piece piece : pieces) {
      if (piece instanceof Curve c) {
        points.addAll(Bezier.cubic(here, c.first, c.second, c.end, tolerance));
      } else {
        points.add(piece.end());
      }
      here = piece.end();
    }
    points.remove(points.size() - 1);
    return new Ring(points);
  }
}
