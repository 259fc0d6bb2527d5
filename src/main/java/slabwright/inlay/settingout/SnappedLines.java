package slabwright.inlay.settingout;

import java.util.Optional;
import slabwright.shape.Line;
import slabwright.shape.Vec;

/**
 * Two chalk lines that cross in the middle of a graphic, as a crew sets them out: from the origin
 * square off the wall, the distance along, square off again to the side, and where the graphic is
 * turned against the wall a last step to turn the lines.
 *
 * @param origin where the tape starts
 * @param square the right angle at the wall
 * @param along mm from the origin, square off the wall, to the station
 * @param station the point on the first line
 * @param aside mm from the station, square to the first line, to the cross; 0 on the line
 * @param side to which one turns at the station, walking in from the origin
 * @param cross the middle of the graphic
 * @param crossSquare the right angle at the station, where the second line starts
 * @param turned how the lines are turned about the cross; empty where they run square to the wall
 * @param up the line snapped along the graphic's up and down
 * @param level the line snapped along its left and right
 */
public record SnappedLines(
    SettingOutOrigin origin,
    SquareCheck square,
    double along,
    Vec station,
    double aside,
    Hand side,
    Vec cross,
    SquareCheck crossSquare,
    Optional<Turned> turned,
    Line up,
    Line level) {

  /** To which side of the origin the leg along the wall runs, as one looks in. */
  public Hand alongWall() {
    return Hand.of(square.onLine().minus(square.corner()), origin.into());
  }

  /** To which side of the first line the other leg at the station runs, as one looks in. */
  public Hand offLine() {
    return Hand.of(crossSquare.onSquare().minus(crossSquare.corner()), origin.into());
  }

  /** Whether the leg at the station goes on along the first line, not back toward the wall. */
  public boolean goesOn() {
    return crossSquare.onLine().minus(crossSquare.corner()).dot(origin.into()) > 0;
  }

  /**
   * From the cross go on a whole length in the first line's direction, then this far to the side: a
   * line runs through the cross and that point.
   *
   * @param on mm, whole feet or meters
   * @param off mm to the side
   * @param side as one looks in from the wall
   */
  public record Turned(double on, double off, Hand side, Vec through) {}
}
