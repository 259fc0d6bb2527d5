package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Vec;

/**
 * On which side of each wall of a walk its dimension runs: outside the room, save that at an inner
 * corner one of the two runs inside, so that they never cross. At an outer corner both may stay
 * outside; at most one runs inside. The last wall's stays outside, clear of the way to closing.
 */
final class TapeDimensions {
  /** Bends below this (sine) are gentle enough for two dimensions to meet. */
  private static final double GENTLE = 0.3;

  private TapeDimensions() {}

  /**
   * Sides as they are in the order of the walls.
   *
   * @param corners of the walk, from its first; the last lies on the first once it is closed
   * @return 1 for the left of a wall as walked, -1 for its right
   */
  static List<Integer> sides(List<Vec> corners) {
    int outside = twiceArea(corners) > 0 ? -1 : 1;
    int walls = corners.size() - 1;
    if (walls < 1) {
      return List.of();
    }
    boolean[] inside = new boolean[walls];
    for (int i = walls - 2; i >= 0; i--) {
      inside[i] = isInside(inside[i + 1], bend(corners, i, i + 1) * outside);
    }
    boolean closed = walls > 2 && corners.get(walls).distanceTo(corners.get(0)) < 1;
    if (closed) {
      inside[walls - 1] = isInside(inside[0], bend(corners, walls - 1, 0) * outside);
    }
    List<Integer> sides = new ArrayList<>();
    for (boolean in : inside) {
      sides.add(in ? -outside : outside);
    }
    return sides;
  }

  /**
   * Whether a dimension runs inside.
   *
   * @param next whether that of the next wall does
   * @param turn between them towards the outside of the room, as a sine
   */
  private static boolean isInside(boolean next, double turn) {
    return Math.abs(turn) < GENTLE ? next : turn > 0 && !next;
  }

  private static double bend(List<Vec> corners, int wall, int next) {
    Vec a = corners.get(wall + 1).minus(corners.get(wall));
    Vec b = corners.get(next + 1).minus(corners.get(next));
    double size = a.length() * b.length();
    return size > 0 ? a.cross(b) / size : 0;
  }

  private static double twiceArea(List<Vec> corners) {
    double sum = 0;
    for (int i = 0; i < corners.size(); i++) {
      sum += corners.get(i).cross(corners.get((i + 1) % corners.size()));
    }
    return sum;
  }
}
