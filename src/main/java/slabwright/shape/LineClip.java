package slabwright.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** The stretches of a line inside a region. */
final class LineClip {
  private LineClip() {}

  static List<Line> inside(Geometry region, Line line) {
    Coordinate[] points = line.points().stream().map(Jts::coordinate).toArray(Coordinate[]::new);
    if (region.isEmpty() || points.length < 2 || line.length() == 0) {
      return List.of();
    }
    Geometry cut =
        OverlayNG.overlay(
            region, Jts.FACTORY.createLineString(points), OverlayNG.INTERSECTION, Jts.GRID);
    LineMerger merger = new LineMerger();
    merger.add(cut);
    List<Line> found = new ArrayList<>();
    for (Object merged : merger.getMergedLineStrings()) {
      found.add(
          new Line(Arrays.stream(((LineString) merged).getCoordinates()).map(Jts::vec).toList()));
    }
    return found;
  }
}
