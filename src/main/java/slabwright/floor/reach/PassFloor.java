package slabwright.floor.reach;

import java.util.Optional;
import slabwright.shape.Vec;

/** A floor, or the part of it about a place, as the search of a narrow pass asks about it. */
interface PassFloor {
  /**
   * Whether a body of the half width, mm, comes so near that it covers the place; empty where this
   * part of the floor can't tell.
   */
  Optional<Boolean> serves(double half, Vec place);

  /**
   * Where it is too narrow for a body of half width {@code high} on the way to the place, and wide
   * enough for one of {@code low}; mm. Empty where this part of the floor can't tell.
   */
  Optional<Vec> neck(double low, double high, Vec place);

  /** The point nearest to a place where driving ends; empty as above. */
  Optional<Vec> nearestObstacle(Vec where);
}
