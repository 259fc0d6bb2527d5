package slabwright.inlay.settingout;

import java.util.List;
import java.util.Optional;
import slabwright.shape.Vec;
import slabwright.units.UnitSystem;

/** Finds the largest three-four-five that has room on the floor, in whole units. */
final class SquareCheckSearch {
  /** A long side beyond this is no easier to hold for two people, mm (common practice). */
  private static final double LONGEST = 6100;

  /** A leg along a wall is held this far off it, mm, so that the sight is over floor. */
  private static final double OFF_WALL = 1;

  private final SightLine sight;
  private final UnitSystem system;

  SquareCheckSearch(SightLine sight, UnitSystem system) {
    this.sight = sight;
    this.system = system;
  }

  /**
   * A check of the angle between two lines.
   *
   * @param corner where they meet
   * @param line unit vector along the line that is there; both ways are tried
   * @param square unit vector along the new line; both ways are tried where {@code bothWays}
   * @param room mm along the line, ahead and behind, beyond which it ends
   */
  Optional<SquareCheck> of(Vec corner, Vec line, Vec square, boolean bothWays, Room room) {
    for (double unit : units()) {
      int most = (int) Math.floor(LONGEST / unit / 5);
      for (int k = most; k >= 1; k--) {
        for (int[] legs : List.of(new int[] {3, 4}, new int[] {4, 3})) {
          Optional<SquareCheck> found =
              fitting(corner, line, square, bothWays, room, legs[0] * k, legs[1] * k, unit, 5 * k);
          if (found.isPresent()) {
            return found;
          }
        }
      }
    }
    return Optional.empty();
  }

  /** How far a line runs from the corner, ahead and behind, mm. */
  record Room(double ahead, double behind) {
    static final Room FREE = new Room(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  private double[] units() {
    return switch (system) {
      case FEET_INCHES -> new double[] {304.8, 25.4};
      case METRIC -> new double[] {1000, 100};
    };
  }

  private Optional<SquareCheck> fitting(
      Vec corner,
      Vec line,
      Vec square,
      boolean bothWays,
      Room room,
      int lineLeg,
      int squareLeg,
      double unit,
      int across) {
    for (int s : bothWays ? new int[] {1, -1} : new int[] {1}) {
      for (int l : new int[] {1, -1}) {
        Vec onLine = corner.plus(line.times(l * lineLeg * unit));
        Vec onSquare = corner.plus(square.times(s * squareLeg * unit));
        boolean hasRoom = lineLeg * unit <= (l > 0 ? room.ahead() : room.behind());
        if (hasRoom && isFree(corner, onLine, onSquare, square.times(s))) {
          return Optional.of(
              new SquareCheck(corner, onLine, onSquare, lineLeg, squareLeg, across, unit));
        }
      }
    }
    return Optional.empty();
  }

  private boolean isFree(Vec corner, Vec onLine, Vec onSquare, Vec square) {
    Vec off = square.times(OFF_WALL);
    return sight.reaches(corner.plus(off), onLine.plus(off))
        && sight.reaches(corner.plus(off), onSquare)
        && sight.reaches(onLine.plus(off), onSquare);
  }
}
