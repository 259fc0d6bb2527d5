package slabwright.tape;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.shape.Vec;
import slabwright.tape.leastsquares.DistanceObservation;
import slabwright.tape.leastsquares.Observation;
import slabwright.tape.leastsquares.Traverse;
import slabwright.tape.leastsquares.TurnObservation;

/**
 * The plain walk round the room, before anything is adjusted.
 *
 * @param path the corners as walked, first wall along x; one more than there are corners, the last
 *     being where the walk ended
 * @param gap from the first corner to where the walk ended
 * @param perimeter of the walls as read, curved ones by their chord; mm
 * @param complete whether every wall and every turn on the way was read; if not, the rest was
 *     filled in and the gap says nothing
 * @param likely the longest gap in this direction that tape and turns as good as stated leave in 99
 *     of 100 walks, mm: their errors carried along the walk
 * @param byTape the same of the tape alone, had all turns been exact; mm
 */
public record ClosingReport(
    List<Vec> path, Vec gap, double perimeter, boolean complete, double likely, double byTape) {
  /** Of a gap in the plane: beyond it lies 1 % of the chi-square distribution with 2 freedoms. */
  private static final double NINETY_NINE_PERCENT = 9.2103;

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
    List<Observation> tapeAlone =
        observations.rows().stream().filter(o -> !(o instanceof TurnObservation)).toList();
    return new ClosingReport(
        path,
        at,
        perimeter,
        walk.complete(),
        likely(observations.rows(), path, at),
        likely(tapeAlone, path, at));
  }

  /** Each wall's error lies along it; a turn's swings all that is walked after it. */
  private static double likely(List<Observation> rows, List<Vec> path, Vec end) {
    int n = path.size() - 1;
    double xx = 0;
    double xy = 0;
    double yy = 0;
    Set<Integer> walls = new HashSet<>();
    Set<Integer> turns = new HashSet<>();
    for (Observation o : rows) {
      Optional<Vec> by = Optional.empty();
      if (o instanceof DistanceObservation s
          && s.to() == (s.from() + 1) % n
          && walls.add(s.from())) {
        by = Optional.of(path.get(s.from() + 1).minus(path.get(s.from())).unit().times(s.sd()));
      } else if (o instanceof TurnObservation t && t.at() > 0 && turns.add(t.at())) {
        Vec arm = end.minus(path.get(t.at()));
        by = Optional.of(new Vec(-arm.y(), arm.x()).times(t.sd()));
      }
      xx += by.map(v -> v.x() * v.x()).orElse(0.0);
      xy += by.map(v -> v.x() * v.y()).orElse(0.0);
      yy += by.map(v -> v.y() * v.y()).orElse(0.0);
    }
    Vec u = end.length() > 0 ? end.unit() : new Vec(1, 0);
    double determinant = xx * yy - xy * xy;
    double across = u.x() * u.x() * yy - 2 * u.x() * u.y() * xy + u.y() * u.y() * xx;
    return determinant <= 0 || across <= 0
        ? Math.sqrt(NINETY_NINE_PERCENT * (xx + yy))
        : Math.sqrt(NINETY_NINE_PERCENT * determinant / across);
  }

  /** The longest gap that is not called bad, mm. */
  public double allowed(TapeRoom room) {
    return room.closingLimit().isPresent() ? room.closingLimit().getAsDouble() * perimeter : likely;
  }

  /** Whether the walk closes as well as it should. */
  public boolean closes(TapeRoom room) {
    return gap.length() <= allowed(room);
  }

  /** Whether the tape's own errors leave such a gap. */
  boolean closesByTape() {
    return gap.length() <= byTape;
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
