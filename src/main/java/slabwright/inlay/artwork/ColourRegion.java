package slabwright.inlay.artwork;

import slabwright.shape.Region;

/**
 * Where one colour of a graphic is seen.
 *
 * @param hex {@code #rrggbb}, lower case
 * @param region mm from the painted bounds' top-left, x right, y down; disjoint from every other
 *     colour's
 * @param lightness CIE L*, 0 black to 100 white
 */
public record ColourRegion(String hex, Region region, double lightness) {}
