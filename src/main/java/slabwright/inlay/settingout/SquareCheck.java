package slabwright.inlay.settingout;

import slabwright.shape.Vec;

/**
 * A right angle checked with the tape: two legs in whole units and the length across between their
 * ends, three to four to five.
 *
 * @param corner where the right angle is
 * @param onLine end of the leg along the known line
 * @param onSquare end of the leg along the line that is to be square to it
 * @param lineLeg whole units
 * @param squareLeg whole units
 * @param across whole units
 * @param unit one unit in mm: a foot or an inch, a meter or a tenth of it
 */
public record SquareCheck(
    Vec corner, Vec onLine, Vec onSquare, int lineLeg, int squareLeg, int across, double unit) {}
