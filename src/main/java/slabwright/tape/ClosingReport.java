package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Vec;
import slabwright.tape.leastsquares.Traverse;

/**
 * The plain walk round the room, before anything is adjusted.
 *
 * @param path the corners as walked, first wall along x; one more than there are corners, the last
 *     being where the walk ended
 * @param gap from the first corner to where the walk ended
 * @param perimeter of the walls as read, curved ones by their chord; mm
 * @param complete whether every wall and every turn on the way was read; if not, the rest was
 *     filled in and the gap says nothing
 */
public record ClosingReport(List<Vec> path, Vec gap, double perimeter, boolean complete) {
  public ClosingReport {
    path = List.copyOf(path);
  }

  /** The walk of a room, also of one that is still being typed in. */
  public static ClosingReport of(TapeRoom room) {
    return of(new RoomObservations(room));
  }

  static ClosingReport of(RoomObservations observations) {
    Traverse walk = Traverse.of(observations.about(), observations.rows(), -1);
    List<Vec> path = new ArrayList<>(List.of(Vec.ZERO));
    Vec at = Vec.ZERO;
    double perimeter = 0;
    for (Vec course : walk.courses()) {
      at = at.plus(course);
      path.add(at);
      perimeter += course.length();
    }
    return new ClosingReport(path, at, perimeter, walk.complete());
  }

  /** Gap over perimeter. */
  public double ratio() {
    return perimeter == 0 ? 0 : gap.length() / perimeter;
  }

  /** The x in 1/x, rounded down; a very large number for a walk that closes. */
  public long oneIn() {
    return ratio() == 0 ? Long.MAX_VALUE : (long) Math.floor(1 / ratio() + 1e-6);
  }
}
