package slabwright.shape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A closed chain of points; the last joins the first and is not repeated. May cross itself and run
 * either way round.
 */
public record Ring(List<Vec> points) {
  public Ring {
    points = List.copyOf(points);
  }

  public static Ring of(double... xy) {
    List<Vec> list = new ArrayList<>(xy.length / 2);
    for (int i = 0; i + 1 < xy.length; i += 2) {
      list.add(new Vec(xy[i], xy[i + 1]));
    }
    return new Ring(list);
  }

  public static Ring rectangle(double minX, double minY, double maxX, double maxY) {
    return of(minX, minY, maxX, minY, maxX, maxY, minX, maxY);
  }

  /** Shoelace area: positive counter-clockwise (y up); what is enclosed twice counts twice. */
  public double signedArea() {
    double twice = 0;
    Vec origin = points.isEmpty() ? Vec.ZERO : points.get(0);
    for (int i = 1; i + 1 < points.size(); i++) {
      twice += points.get(i).minus(origin).cross(points.get(i + 1).minus(origin));
    }
    return twice / 2;
  }

  public double length() {
    double sum = 0;
    for (int i = 0; i < points.size(); i++) {
      sum += points.get(i).distanceTo(points.get((i + 1) % points.size()));
    }
    return sum;
  }

  public Bounds bounds() {
    return Bounds.of(points);
  }

  public Ring map(Affine map) {
    return new Ring(points.stream().map(map::apply).toList());
  }

  public Ring reversed() {
    List<Vec> back = new ArrayList<>(points);
    Collections.reverse(back);
    return new Ring(back);
  }
}
