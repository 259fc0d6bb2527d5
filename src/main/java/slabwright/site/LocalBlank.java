package slabwright.site;

import slabwright.units.Length;

/**
 * A blank set by hand, only as large as one colour needs there. Frame: millimetres at full size
 * from the top-left corner of the graphic's painted bounds, x right, y down.
 *
 * @param colour as {@code #rrggbb}, lower case
 * @param corner the top-left one as read
 */
public record LocalBlank(String colour, Spot corner, Length width, Length height) {}
