package slabwright.inlay.masking;

import java.util.List;
import java.util.OptionalDouble;
import slabwright.shape.Affine;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.units.Message;

/**
 * The floor that an inlay lies on: in the site's frame where it comes in, in the blank's where the
 * masking is made.
 *
 * @param floor the free floor
 * @param upright what stands at its edges and must be kept clean
 */
public record FloorAround(Region floor, List<UprightObstacle> upright) {
  public FloorAround {
    upright = List.copyOf(upright);
  }

  /** The same floor in another frame. */
  public FloorAround map(Affine to) {
    return new FloorAround(
        floor.map(to),
        upright.stream()
            .map(s -> new UprightObstacle(s.what(), s.foot().map(to), s.height()))
            .toList());
  }

  /**
   * Something upright: a wall, glass, a doorway.
   *
   * @param what its word on the sheet
   * @param foot its line on the floor
   * @param height how high it must be kept clean at most, mm, when that is known
   */
  public record UprightObstacle(Message what, Line foot, OptionalDouble height) {}
}
