package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;

/** The sides of many rings by square cells; finds the nearest point of them exactly. */
final class ContourSegments {
  private static final int MOST_CELLS_ACROSS = 600;
  private static final double LEAST_CELL = 0.5;

  /** The nearest point of a side, and the unit vector along the side. */
  record Near(Vec at, Vec along, double distance) {}

  private record Side(Vec a, Vec b) {}

  private final Bounds bounds;
  private final double cell;
  private final int columns;
  private final int rows;
  private final List<Side> sides = new ArrayList<>();
  private final int[][] cells;
  private final int[] counts;

  ContourSegments(List<Ring> rings) {
    Bounds all = Bounds.EMPTY;
    for (Ring r : rings) {
      all = all.including(r.bounds());
    }
    bounds = all.isEmpty() ? new Bounds(0, 0, 0, 0) : all;
    cell = Math.max(LEAST_CELL, Math.max(bounds.width(), bounds.height()) / MOST_CELLS_ACROSS);
    columns = (int) Math.floor(bounds.width() / cell) + 1;
    rows = (int) Math.floor(bounds.height() / cell) + 1;
    cells = new int[columns * rows][];
    counts = new int[columns * rows];
    for (Ring ring : rings) {
      List<Vec> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        add(new Side(p.get(i), p.get((i + 1) % p.size())));
      }
    }
  }

  private void add(Side side) {
    int index = sides.size();
    sides.add(side);
    double length = side.a.distanceTo(side.b);
    int steps = Math.max(1, (int) Math.ceil(length / cell));
    int lastKey = -1;
    for (int k = 0; k < steps; k++) {
      // the box of each short stretch covers every cell that the stretch passes
      Vec a = side.a.towards(side.b, (double) k / steps);
      Vec b = side.a.towards(side.b, (k + 1.0) / steps);
      for (int c = Math.min(column(a), column(b)); c <= Math.max(column(a), column(b)); c++) {
        for (int r = Math.min(row(a), row(b)); r <= Math.max(row(a), row(b)); r++) {
          int key = r * columns + c;
          if (key != lastKey) {
            put(key, index);
          }
          lastKey = key;
        }
      }
    }
  }

  private void put(int key, int index) {
    int[] in = cells[key];
    if (in == null) {
      in = new int[4];
      cells[key] = in;
    } else if (counts[key] == in.length) {
      in = Arrays.copyOf(in, 2 * in.length);
      cells[key] = in;
    }
    in[counts[key]++] = index;
  }

  private int column(Vec p) {
    return Math.max(0, Math.min(columns - 1, (int) Math.floor((p.x() - bounds.minX()) / cell)));
  }

  private int row(Vec p) {
    return Math.max(0, Math.min(rows - 1, (int) Math.floor((p.y() - bounds.minY()) / cell)));
  }

  /** The nearest point within reach. */
  Optional<Near> nearest(Vec p, double reach) {
    return nearest(p, reach, Vec.ZERO, 0);
  }

  /**
   * The nearest point within reach on sides that run much as {@code along} does.
   *
   * @param like least cosine of the angle between them, whichever way they run
   */
  Optional<Near> nearest(Vec p, double reach, Vec along, double like) {
    if (sides.isEmpty()) {
      return Optional.empty();
    }
    if (bounds.distanceTo(p) > reach) {
      return Optional.empty();
    }
    int c0 = column(p);
    int r0 = row(p);
    Search search = new Search(p, reach, along, like);
    int most = Math.max(columns, rows);
    for (int ring = 0; ring <= most && (ring - 1) * cell <= search.nearest; ring++) {
      search.ring(c0, r0, ring);
    }
    return Optional.ofNullable(search.best);
  }

  /** One question. */
  private final class Search {
    private final Vec p;
    private final Vec along;
    private final double like;
    private double nearest;
    private Near best;

    Search(Vec p, double reach, Vec along, double like) {
      this.p = p;
      this.along = along;
      this.like = like;
      this.nearest = reach;
    }

    void ring(int c0, int r0, int ring) {
      for (int c = Math.max(0, c0 - ring); c <= Math.min(columns - 1, c0 + ring); c++) {
        boolean side = Math.abs(c - c0) == ring;
        for (int r = r0 - ring; r <= r0 + ring; r += side || ring == 0 ? 1 : 2 * ring) {
          if (r >= 0 && r < rows) {
            cell(r * columns + c);
          }
        }
      }
    }

    private void cell(int key) {
      for (int i = 0; i < counts[key]; i++) {
        Side s = sides.get(cells[key][i]);
        Vec at = SegmentGeometry.nearest(s.a, s.b, p);
        double d = at.distanceTo(p);
        if (d <= nearest) {
          Vec u = s.b.minus(s.a).unit();
          if (like <= 0 || Math.abs(u.dot(along)) >= like) {
            nearest = d;
            best = new Near(at, u, d);
          }
        }
      }
    }
  }
}
