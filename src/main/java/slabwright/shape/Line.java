package slabwright.shape;

import java.util.List;

/** An open chain of points in millimetres. */
public record Line(List<Vec> points) {
  public Line {
    points = List.copyOf(points);
  }

  public static Line of(Vec... points) {
    return new Line(List.of(points));
  }

  public double length() {
    double sum = 0;
    for (int i = 0; i + 1 < points.size(); i++) {
      sum += points.get(i).distanceTo(points.get(i + 1));
    }
    return sum;
  }

  public Line map(Affine map) {
    return new Line(points.stream().map(map::apply).toList());
  }
}
