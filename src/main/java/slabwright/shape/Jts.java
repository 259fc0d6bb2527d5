package slabwright.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.PrecisionModel;

/** Between our values and those of JTS, on the one grid of 0.001 mm. */
public final class Jts {
  static final double STEPS_PER_MM = 1000;
  static final PrecisionModel GRID = new PrecisionModel(STEPS_PER_MM);
  public static final GeometryFactory FACTORY = new GeometryFactory(GRID);

  private Jts() {}

  public static double snap(double v) {
    return GRID.makePrecise(v);
  }

  static Coordinate coordinate(Vec p) {
    return new Coordinate(snap(p.x()), snap(p.y()));
  }

  public static Vec vec(Coordinate c) {
    return new Vec(c.x, c.y);
  }

  static Point point(Vec p) {
    return FACTORY.createPoint(new Coordinate(p.x(), p.y()));
  }

  /** On the grid; a line of fewer than two points is empty. */
  static LineString line(Line line) {
    return line.points().size() < 2
        ? FACTORY.createLineString()
        : FACTORY.createLineString(
            line.points().stream().map(Jts::coordinate).toArray(Coordinate[]::new));
  }

  /** The ring's points, turned to run counter-clockwise (y up) when asked, else clockwise. */
  static Ring ring(LinearRing ring, boolean counterClockwise) {
    CoordinateSequence s = ring.getCoordinateSequence();
    List<Vec> points = new ArrayList<>(s.size());
    for (int i = 0; i + 1 < s.size(); i++) {
      points.add(new Vec(s.getX(i), s.getY(i)));
    }
    Ring made = new Ring(points);
    return Orientation.isCCW(s) == counterClockwise ? made : made.reversed();
  }

  /** A closed chain of grid coordinates without repeated points; shorter than 4 when degenerate. */
  public static Coordinate[] closed(Ring ring) {
    List<Coordinate> list = new ArrayList<>(ring.points().size() + 1);
    for (Vec p : ring.points()) {
      Coordinate c = coordinate(p);
      if (list.isEmpty() || !list.get(list.size() - 1).equals2D(c)) {
        list.add(c);
      }
    }
    if (!list.isEmpty() && !list.get(0).equals2D(list.get(list.size() - 1))) {
      list.add(list.get(0).copy());
    }
    return list.toArray(new Coordinate[0]);
  }
}
