package slabwright.inlay.stencil;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slabwright.shape.Vec;

/** Sides of a boundary by square cells, to find those near a point. */
final class SegmentGrid {
  private final double cell;
  private final Map<Long, List<BoundarySegment>> cells = new HashMap<>();
  private long lastX;
  private long lastY;

  SegmentGrid(double cell) {
    this.cell = cell;
  }

  void add(BoundarySegment side) {
    int steps = (int) Math.ceil(side.length() / cell) + 1;
    for (int k = 0; k <= steps; k++) {
      Vec p = side.a().towards(side.b(), (double) k / steps);
      long x = index(p.x());
      long y = index(p.y());
      if (k > 0 && x == lastX && y == lastY) {
        continue;
      }
      lastX = x;
      lastY = y;
      for (int dx = -1; dx <= 1; dx++) {
        for (int dy = -1; dy <= 1; dy++) {
          put(key(x + dx, y + dy), side);
        }
      }
    }
  }

  /** Once into each cell: a side that is there already is its last. */
  private void put(long key, BoundarySegment side) {
    List<BoundarySegment> cell = cells.computeIfAbsent(key, x -> new ArrayList<>());
    if (cell.isEmpty() || !last(cell).equals(side)) {
      cell.add(side);
    }
  }

  private static BoundarySegment last(List<BoundarySegment> cell) {
    return cell.get(cell.size() - 1);
  }

  /** All sides that come within a cell's width of the point, and some that lie a little farther. */
  List<BoundarySegment> near(Vec p) {
    return cells.getOrDefault(key(index(p.x()), index(p.y())), List.of());
  }

  private long index(double v) {
    return (long) Math.floor(v / cell);
  }

  private static long key(long x, long y) {
    return x * 4_000_037L + y;
  }
}
