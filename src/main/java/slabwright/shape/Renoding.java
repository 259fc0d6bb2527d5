package slabwright.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/**
 * Later passes over what has been noded once. Two edges that were there in the pass before have
 * been looked at and need no split, so only fresh edges are compared with what lies about them: a
 * handful of splits costs a handful of look-ups, not one more noding of the whole.
 */
final class Renoding {
  /** Edges of a run: short, so that its box holds little else. */
  private static final int RUN = 12;

  private final List<Place> places = new ArrayList<>();
  private final HPRtree index = new HPRtree();
  private final BooleanSupplier cancelled;

  /** A run, its position in the list of all, and its bounds now. */
  private static final class Place {
    final NodedRun run;
    final int number;
    Envelope box;

    Place(NodedRun run, int number) {
      this.run = run;
      this.number = number;
      box = run.box();
    }
  }

  /**
   * Takes over runs that have been noded and split once.
   *
   * @param drift no split that is to come lies farther from a run as it is now, grid steps
   */
  Renoding(List<NodedRun> runs, double drift, BooleanSupplier cancelled) {
    this.cancelled = cancelled;
    for (NodedRun run : runs) {
      run.cut(RUN, part -> places.add(new Place(part, places.size())));
    }
    for (Place place : places) {
      Envelope room = new Envelope(place.box);
      room.expandBy(drift + 1);
      index.insert(room, place);
    }
  }

  /** Marks what is to be split. */
  void compare(SegmentSplitter splitter) {
    for (Place place : places) {
      if (place.run.hasFresh()) {
        if (cancelled.getAsBoolean()) {
          throw new CancellationException();
        }
        compare(place, splitter);
      }
    }
  }

  private void compare(Place place, SegmentSplitter splitter) {
    Envelope about = place.run.freshBox();
    about.expandBy(splitter.nearness());
    for (Object found : index.query(about)) {
      Place other = (Place) found;
      if (other.box.intersects(about)) {
        compare(place, other, splitter);
      }
    }
  }

  private static void compare(Place place, Place other, SegmentSplitter splitter) {
    double near = splitter.nearness();
    for (int i = 0; i + 1 < place.run.size(); i++) {
      if (!place.run.isFresh(i)) {
        continue;
      }
      Coordinate p = place.run.getCoordinate(i);
      Coordinate q = place.run.getCoordinate(i + 1);
      double west = Math.min(p.x, q.x) - near;
      double east = Math.max(p.x, q.x) + near;
      double south = Math.min(p.y, q.y) - near;
      double north = Math.max(p.y, q.y) + near;
      if (other.box.getMaxX() < west
          || other.box.getMinX() > east
          || other.box.getMaxY() < south
          || other.box.getMinY() > north) {
        continue;
      }
      for (int j = 0; j + 1 < other.run.size(); j++) {
        Coordinate r = other.run.getCoordinate(j);
        Coordinate s = other.run.getCoordinate(j + 1);
        if (Math.max(r.x, s.x) >= west
            && Math.min(r.x, s.x) <= east
            && Math.max(r.y, s.y) >= south
            && Math.min(r.y, s.y) <= north) {
          pair(place, i, other, j, splitter);
        }
      }
    }
  }

  /** The earlier edge first, so that a crossing is rounded the same way in every pass. */
  private static void pair(Place place, int i, Place other, int j, SegmentSplitter splitter) {
    boolean before = other.number < place.number || (other.number == place.number && j < i);
    if (!before) {
      splitter.processIntersections(place.run, i, other.run, j);
    } else if (!other.run.isFresh(j)) {
      splitter.processIntersections(other.run, j, place.run, i);
    }
  }

  /** Splits where marked. */
  void split() {
    for (Place place : places) {
      boolean marked = place.run.isMarked();
      place.run.split();
      if (marked) {
        place.box = place.run.box();
      }
    }
  }

  /** All runs, those of one chain in the order in which they lie on it. */
  List<NodedRun> runs() {
    List<NodedRun> runs = new ArrayList<>(places.size());
    for (Place place : places) {
      runs.add(place.run);
    }
    return runs;
  }
}
