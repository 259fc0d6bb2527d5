package slabwright.shape;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import slabwright.shape.ints.IntList;
import slabwright.shape.ints.UnionFind;

/**
 * Faces of one label as one geometry, without the seams between them. The rings are read off the
 * half-edges, so neighbours share their boundary exactly and no overlay is needed.
 */
final class DissolveOp {
  private final HalfEdges halves;
  private final FaceTable faces;
  private final int[] labels;
  private final UnionFind parts;
  private final boolean[] done;
  private final Map<Integer, List<LinearRing>> ringsOfPart = new HashMap<>();

  /** A negative label leaves its face out. */
  DissolveOp(HalfEdges halves, FaceTable faces, int[] labels) {
    this.halves = halves;
    this.faces = faces;
    this.labels = labels;
    parts = new UnionFind(faces.size());
    done = new boolean[halves.size()];
    for (int h = 0; h < halves.size(); h += 2) {
      if (label(h) >= 0 && label(h) == label(HalfEdges.twin(h))) {
        parts.join(faces.faceOf(h), faces.faceOf(HalfEdges.twin(h)));
      }
    }
  }

  /** One geometry for each label from 0 to {@code count - 1}. */
  List<Geometry> run(int count) {
    for (int h = 0; h < done.length; h++) {
      if (!done[h] && isBoundary(h)) {
        trace(h);
      }
    }
    List<List<Polygon>> polygons = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      polygons.add(new ArrayList<>());
    }
    for (int face = 0; face < labels.length; face++) {
      List<LinearRing> rings = ringsOfPart.get(face);
      if (rings != null) {
        polygons.get(labels[face]).add(polygon(rings));
      }
    }
    return polygons.stream().map(DissolveOp::geometry).toList();
  }

  private static Geometry geometry(List<Polygon> polygons) {
    return polygons.size() == 1
        ? polygons.get(0)
        : Jts.FACTORY.createMultiPolygon(polygons.toArray(new Polygon[0]));
  }

  private int label(int h) {
    return labels[faces.faceOf(h)];
  }

  private boolean isBoundary(int h) {
    return label(h) >= 0 && label(h) != label(HalfEdges.twin(h));
  }

  private void trace(int start) {
    List<LinearRing> rings =
        ringsOfPart.computeIfAbsent(parts.root(faces.faceOf(start)), p -> new ArrayList<>());
    IntList walk = new IntList();
    Map<Integer, Integer> placeOfPinned = new HashMap<>();
    int h = start;
    do {
      done[h] = true;
      int corner = halves.origin(h);
      if (isPinned(corner, label(h))) {
        Integer before = placeOfPinned.get(corner);
        if (before != null) {
          rings.add(cutOff(walk, before, placeOfPinned));
        }
        placeOfPinned.put(corner, walk.size());
      }
      walk.add(corner);
      h = nextBoundary(h);
    } while (h != start);
    rings.add(ring(walk, 0));
  }

  /** The loop since the corner was last passed becomes a ring of its own. */
  private LinearRing cutOff(IntList walk, int from, Map<Integer, Integer> placeOfPinned) {
    LinearRing loop = ring(walk, from);
    while (walk.size() > from) {
      placeOfPinned.remove(walk.removeLast());
    }
    return loop;
  }

  /** Turns past the seams inside the part. */
  private int nextBoundary(int h) {
    int next = halves.next(h);
    while (!isBoundary(next)) {
      next = halves.next(HalfEdges.twin(next));
    }
    return next;
  }

  /** Whether the label's boundary passes the corner more than once, so that rings touch there. */
  private boolean isPinned(int corner, int label) {
    int leaving = 0;
    for (int i = halves.around().start(corner); i < halves.around().end(corner); i++) {
      int h = halves.around().member(i);
      leaving += isBoundary(h) && label(h) == label ? 1 : 0;
    }
    return leaving > 1;
  }

  private LinearRing ring(IntList walk, int from) {
    int n = walk.size() - from;
    List<Coordinate> points = new ArrayList<>(n + 1);
    for (int i = 0; i < n; i++) {
      int before = walk.get(from + (i + n - 1) % n);
      int corner = walk.get(from + i);
      int after = walk.get(from + (i + 1) % n);
      if (halves.side(before, corner, after) != 0 || isPinned(corner, labelAt(corner, after))) {
        points.add(coordinate(corner));
      }
    }
    points.add(points.get(0).copy());
    return Jts.FACTORY.createLinearRing(points.toArray(new Coordinate[0]));
  }

  private int labelAt(int from, int to) {
    for (int i = halves.around().start(from); i < halves.around().end(from); i++) {
      if (halves.target(halves.around().member(i)) == to) {
        return label(halves.around().member(i));
      }
    }
    throw new IllegalStateException("no edge between corners that follow one another");
  }

  private Coordinate coordinate(int corner) {
    return new Coordinate(
        halves.corners().first(corner) / Jts.STEPS_PER_MM,
        halves.corners().second(corner) / Jts.STEPS_PER_MM);
  }

  /** The largest ring of a connected part is its shell. */
  private static Polygon polygon(List<LinearRing> rings) {
    int shell = 0;
    double largest = -1;
    for (int i = 0; i < rings.size(); i++) {
      double area = Math.abs(Area.ofRingSigned(rings.get(i).getCoordinateSequence()));
      if (area > largest) {
        largest = area;
        shell = i;
      }
    }
    List<LinearRing> holes = new ArrayList<>(rings);
    LinearRing outer = holes.remove(shell);
    return Jts.FACTORY.createPolygon(outer, holes.toArray(new LinearRing[0]));
  }
}
