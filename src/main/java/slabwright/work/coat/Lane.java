package slabwright.work.coat;

import java.time.Duration;
import slabwright.shape.Line;
import slabwright.shape.Region;

/**
 * One strip of floor that is rolled in one go.
 *
 * @param number in the order of rolling, from 1
 * @param walk along its middle, towards the end nearer the way out
 * @param from when it is begun, from the coat's start
 * @param to when it is done
 * @param narrow whether it is left over a neck too narrow to walk, so rolled from its neighbour
 */
public record Lane(
    int number, Region region, Line walk, Duration from, Duration to, boolean narrow) {
  /** The same lane after others and later. */
  Lane after(int lanes, Duration start) {
    return new Lane(number + lanes, region, walk, from.plus(start), to.plus(start), narrow);
  }
}
