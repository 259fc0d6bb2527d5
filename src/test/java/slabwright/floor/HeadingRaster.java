package slabwright.floor;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * Positions by headings, flooded: a rectangle is free where none of many points of it lies on a
 * shut cell. Shares nothing with the program's way of doing it.
 */
final class HeadingRaster {
  static final double CELL = 50;

  /** Half a cell's diagonal for the position, as much for the floor, and half a heading's swing. */
  static final double ERROR = 85;

  private static final int HEADINGS = 45;

  private final DistanceRaster raster;
  private final boolean[] open;
  private final boolean[] start;

  HeadingRaster(Region room, Region start) {
    raster = new DistanceRaster(room.bounds().grown(2 * CELL), CELL);
    open = raster.fill(room);
    this.start = raster.fill(start);
  }

  Vec middle(int i) {
    return raster.middle(i);
  }

  boolean[] fill(Region region) {
    return raster.fill(region);
  }

  double[] distanceTo(boolean[] marked) {
    return raster.distanceTo(marked);
  }

  /** Cells under the middle line of a body that is {@code grown} at every side. */
  boolean[] reached(double w, double l, double grown) {
    int n = raster.size();
    boolean[] free = new boolean[n * HEADINGS];
    for (int h = 0; h < HEADINGS; h++) {
      int[][] body = offsets(h, l / 2 + grown, w / 2 + grown);
      for (int i = 0; i < n; i++) {
        free[h * n + i] = open[i] && fits(i, body);
      }
    }
    boolean[] seen = flood(free, n);
    boolean[] covered = new boolean[n];
    for (int h = 0; h < HEADINGS; h++) {
      int[][] line = offsets(h, (l - w) / 2, 0);
      for (int i = 0; i < n; i++) {
        for (int[] o : line) {
          if (seen[h * n + i]) {
            covered[i + o[0] + o[1] * raster.width] = true;
          }
        }
      }
    }
    return covered;
  }

  /** Cell steps to points over half a rectangle's sides, closer than a cell. */
  private static int[][] offsets(int heading, double fore, double side) {
    double angle = Math.PI * heading / HEADINGS;
    List<int[]> all = new ArrayList<>();
    int m = (int) Math.ceil(2 * fore / (0.9 * CELL));
    int k = (int) Math.ceil(2 * side / (0.9 * CELL));
    for (int i = 0; i <= m; i++) {
      for (int j = 0; j <= k; j++) {
        double u = -fore + 2 * fore * i / Math.max(1, m);
        double v = k == 0 ? 0 : -side + 2 * side * j / k;
        all.add(
            new int[] {
              (int) Math.rint((u * Math.cos(angle) - v * Math.sin(angle)) / CELL),
              (int) Math.rint((u * Math.sin(angle) + v * Math.cos(angle)) / CELL)
            });
      }
    }
    return all.toArray(int[][]::new);
  }

  private boolean fits(int i, int[][] body) {
    int x = i % raster.width;
    int y = i / raster.width;
    for (int[] o : body) {
      int cx = x + o[0];
      int cy = y + o[1];
      if (cx < 0
          || cy < 0
          || cx >= raster.width
          || cy >= raster.height
          || !open[cy * raster.width + cx]) {
        return false;
      }
    }
    return true;
  }

  private boolean[] flood(boolean[] free, int n) {
    boolean[] seen = new boolean[free.length];
    Deque<Integer> todo = new ArrayDeque<>();
    for (int i = 0; i < free.length; i++) {
      if (free[i] && start[i % n]) {
        seen[i] = true;
        todo.add(i);
      }
    }
    while (!todo.isEmpty()) {
      int at = todo.remove();
      int h = at / n;
      int i = at % n;
      int[] next = {
        at - 1,
        at + 1,
        at - raster.width,
        at + raster.width,
        (h + 1) % HEADINGS * n + i,
        (h + HEADINGS - 1) % HEADINGS * n + i
      };
      for (int j : next) {
        if (j >= 0 && j < free.length && free[j] && !seen[j]) {
          seen[j] = true;
          todo.add(j);
        }
      }
    }
    return seen;
  }
}
