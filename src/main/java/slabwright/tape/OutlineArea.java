package slabwright.tape;

import java.util.List;
import slabwright.shape.Arcs;
import slabwright.tape.leastsquares.Reliability;

/** The area inside corners and arcs, and how well it is known. */
final class OutlineArea {
  private final double[] xy;
  private final List<Double> rises;
  private final double sign;

  /** Rises are positive to the right of the walk. */
  OutlineArea(double[] xy, List<Double> rises) {
    this.xy = xy.clone();
    this.rises = List.copyOf(rises);
    sign = Math.signum(chords());
  }

  /** Shoelace area of the corners, positive counter-clockwise. */
  private double chords() {
    double twice = 0;
    for (int c = 0; c < rises.size(); c++) {
      int d = next(c);
      twice += xy[2 * c] * xy[2 * d + 1] - xy[2 * d] * xy[2 * c + 1];
    }
    return twice / 2;
  }

  /** Whether the room lies to the left of the walk. */
  boolean leftHanded() {
    return sign > 0;
  }

  double area() {
    double area = Math.abs(chords());
    for (int wall = 0; wall < rises.size(); wall++) {
      double rise = rises.get(wall);
      area += sign * Math.signum(rise) * Arcs.segmentArea(chord(wall), rise);
    }
    return area;
  }

  /**
   * First-order propagation. A segment counts as 2/3 chord × rise in the slopes, which is its limit
   * for a flat arc.
   */
  double standardDeviation(Reliability quality, TapeError tape) {
    double[] slope = slopes();
    double variance = 0;
    for (int c = 0; c < slope.length; c++) {
      for (int d = 0; d < slope.length; d++) {
        variance += slope[c] * slope[d] * quality.cofactor(c, d);
      }
    }
    for (int wall = 0; wall < rises.size(); wall++) {
      double rise = rises.get(wall);
      double by = rise == 0 ? 0 : chord(wall) * 2 / 3 * tape.of(rise);
      variance += by * by;
    }
    return Math.sqrt(Math.max(0, variance));
  }

  private double[] slopes() {
    double[] slope = new double[xy.length];
    for (int c = 0; c < rises.size(); c++) {
      int d = next(c);
      slope[2 * c] += sign * xy[2 * d + 1] / 2;
      slope[2 * d] -= sign * xy[2 * c + 1] / 2;
      slope[2 * c + 1] -= sign * xy[2 * d] / 2;
      slope[2 * d + 1] += sign * xy[2 * c] / 2;
      double along = sign * rises.get(c) * 2 / 3 / Math.max(chord(c), 1e-9);
      double dx = xy[2 * d] - xy[2 * c];
      double dy = xy[2 * d + 1] - xy[2 * c + 1];
      slope[2 * c] -= along * dx;
      slope[2 * d] += along * dx;
      slope[2 * c + 1] -= along * dy;
      slope[2 * d + 1] += along * dy;
    }
    return slope;
  }

  private double chord(int wall) {
    int d = next(wall);
    return Math.hypot(xy[2 * d] - xy[2 * wall], xy[2 * d + 1] - xy[2 * wall + 1]);
  }

  private int next(int corner) {
    return (corner + 1) % rises.size();
  }
}
