package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * The corners of a floor: where its edge turns by more than 40° at one point. Inside corners are
 * those a person stands in, outside corners those one walks round.
 */
public record FloorCorners(List<Vec> inside, List<Vec> outside) {
  /** Sharper than any bend of an arc of 10 mm or more, flattened within 0.5 mm. */
  static final double LEAST_TURN = Math.toRadians(40);

  public FloorCorners {
    inside = List.copyOf(inside);
    outside = List.copyOf(outside);
  }

  /** The corners of a region, its holes included. */
  public static FloorCorners of(Region floor) {
    List<Vec> inside = new ArrayList<>();
    List<Vec> outside = new ArrayList<>();
    for (Ring ring : floor.rings()) {
      int n = ring.points().size();
      for (int i = 0; i < n; i++) {
        Vec at = ring.points().get(i);
        double turn = turn(ring.points().get((i + n - 1) % n), at, ring.points().get((i + 1) % n));
        if (Math.abs(turn) > LEAST_TURN) {
          (turn > 0 ? inside : outside).add(at);
        }
      }
    }
    return new FloorCorners(inside, outside);
  }

  /** The turn at a corner in radians, positive to the left. */
  static double turn(Vec before, Vec at, Vec after) {
    Vec in = at.minus(before);
    Vec on = after.minus(at);
    return Math.atan2(in.cross(on), in.dot(on));
  }
}
