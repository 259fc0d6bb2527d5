package slabwright.picture;

import java.util.List;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;

/**
 * Something that stands on the floor, as a plain block.
 *
 * @param foot its rings, site frame
 * @param height mm
 */
record StandingBlock(List<Ring> foot, double height, LinearColour colour) {
  StandingBlock {
    foot = List.copyOf(foot);
  }

  /** Its top less a rim of the width in mm; empty for what is hardly wider. */
  List<Ring> top(double rim) {
    return Region.of(foot, FillRule.NONZERO).offset(-rim, 1).rings();
  }
}
