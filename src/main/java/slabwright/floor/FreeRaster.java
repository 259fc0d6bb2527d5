package slabwright.floor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.PreparedRegion;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.RingWindow;
import slabwright.shape.Vec;
import slabwright.shape.ints.IntList;

/**
 * Square cells that lie wholly where a machine's middle can be. A way from cell to cell is a way
 * for the machine, so what is found this way is certain; that none is found says nothing.
 */
final class FreeRaster {
  private static final int CELLS = 200_000;

  /** A gate is left for a cell so many cells away at most. */
  private static final int NEAR = 3;

  private final double side;
  private final double x0;
  private final double y0;
  private final int columns;
  private final int rows;
  private final boolean[] free;
  private final List<Region> boxes;

  /**
   * Cells of a region.
   *
   * @param boxes where the machine comes from
   */
  FreeRaster(Region region, List<Region> boxes) {
    this.boxes = List.copyOf(boxes);
    Bounds b = region.bounds();
    side = Math.max(20, Math.sqrt(b.width() * b.height() / CELLS));
    x0 = b.isEmpty() ? 0 : b.minX() - side / 2;
    y0 = b.isEmpty() ? 0 : b.minY() - side / 2;
    columns = (int) (b.width() / side) + 2;
    rows = (int) (b.height() / side) + 2;
    free = new boolean[columns * rows];
    boolean[] touched = new boolean[free.length];
    boolean[] crossed = new boolean[free.length];
    for (Ring ring : region.rings()) {
      List<Vec> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        draw(p.get(i), p.get((i + 1) % p.size()), touched, crossed);
      }
    }
    for (int row = 0; row < rows; row++) {
      boolean inside = false;
      for (int cell = row * columns; cell < (row + 1) * columns; cell++) {
        inside ^= crossed[cell];
        free[cell] = inside && !touched[cell];
      }
    }
  }

  /** Marks the cells that a piece of boundary touches and, by rows' middles, those it crosses. */
  private void draw(Vec from, Vec to, boolean[] touched, boolean[] crossed) {
    Vec p = from.x() <= to.x() ? from : to;
    Vec q = from.x() <= to.x() ? to : from;
    for (int c = column(p.x()); c <= column(q.x()); c++) {
      double left = Math.max(p.x(), x0 + c * side);
      double right = Math.min(q.x(), x0 + (c + 1) * side);
      double a = at(p, q, left);
      double b = left < right ? at(p, q, right) : q.y();
      for (int r = row(Math.min(a, b) - 0.01); r <= row(Math.max(a, b) + 0.01); r++) {
        touched[r * columns + c] = true;
      }
    }
    double low = Math.min(p.y(), q.y());
    double high = Math.max(p.y(), q.y());
    for (int r = row(low); r <= row(high); r++) {
      double y = middle(r);
      if (low <= y && y < high) {
        double x = p.x() + (q.x() - p.x()) * (y - p.y()) / (q.y() - p.y());
        crossed[r * columns + column(x)] ^= true;
      }
    }
  }

  private static double at(Vec p, Vec q, double x) {
    return q.x() == p.x() ? p.y() : p.y() + (q.y() - p.y()) * (x - p.x()) / (q.x() - p.x());
  }

  private int column(double x) {
    return Math.max(0, Math.min(columns - 1, (int) ((x - x0) / side)));
  }

  private int row(double y) {
    return Math.max(0, Math.min(rows - 1, (int) ((y - y0) / side)));
  }

  private double middle(int row) {
    return y0 + (row + 0.5) * side;
  }

  private Vec centre(int cell) {
    return new Vec(x0 + (cell % columns + 0.5) * side, middle(cell / columns));
  }

  /**
   * What is left of the cells round boxes that are shut, in pieces that hang together.
   *
   * @param count how many pieces there are
   * @param entered those that are surely come to from a way in
   * @param beside those that each gate surely leads to
   */
  record Round(int count, Set<Integer> entered, List<Set<Integer>> beside) {}

  /**
   * What surely hangs together without passing through any of the boxes that are shut.
   *
   * @param room the region the cells are of
   */
  Round round(List<Bounds> shut, List<WindowAccess.Gate> gates, PreparedRegion room) {
    int[] pieces = new int[free.length];
    Arrays.fill(pieces, -1);
    boolean[] left = left(shut);
    int count = 0;
    for (int cell = 0; cell < left.length; cell++) {
      if (left[cell]) {
        flood(cell, count, left, pieces);
        count++;
      }
    }
    Set<Integer> entered = new TreeSet<>();
    seeds().forEach(seed -> entered.add(pieces[seed]));
    List<Set<Integer>> beside = new ArrayList<>();
    gates.forEach(g -> beside.add(beside(pieces, g.middle(), shut, room)));
    entered.remove(-1);
    return new Round(count, entered, beside);
  }

  private boolean[] left(List<Bounds> shut) {
    boolean[] left = free.clone();
    for (Bounds b : shut) {
      for (int r = row(b.minY()); r <= row(b.maxY()); r++) {
        Arrays.fill(
            left, r * columns + column(b.minX()), r * columns + column(b.maxX()) + 1, false);
      }
    }
    return left;
  }

  /** Gives all cells that hang together with one the number of their piece. */
  private void flood(int first, int piece, boolean[] left, int[] pieces) {
    IntList work = new IntList();
    visit(first, piece, left, pieces, work);
    while (work.size() > 0) {
      int cell = work.removeLast();
      int column = cell % columns;
      if (column > 0) {
        visit(cell - 1, piece, left, pieces, work);
      }
      if (column < columns - 1) {
        visit(cell + 1, piece, left, pieces, work);
      }
      visit(cell - columns, piece, left, pieces, work);
      visit(cell + columns, piece, left, pieces, work);
    }
  }

  private static void visit(int cell, int piece, boolean[] left, int[] pieces, IntList work) {
    if (cell >= 0 && cell < left.length && left[cell]) {
      left[cell] = false;
      pieces[cell] = piece;
      work.add(cell);
    }
  }

  /** Cells whose middles lie in a box before a way in. */
  private List<Integer> seeds() {
    List<Integer> seeds = new ArrayList<>();
    for (Region box : boxes) {
      Bounds b = box.bounds();
      for (int r = row(b.minY()); r <= row(b.maxY()); r++) {
        for (int c = column(b.minX()); c <= column(b.maxX()); c++) {
          int cell = r * columns + c;
          if (free[cell] && b.contains(centre(cell)) && box.contains(centre(cell))) {
            seeds.add(cell);
          }
        }
      }
    }
    return seeds;
  }

  private Set<Integer> beside(int[] pieces, Vec gate, List<Bounds> shut, PreparedRegion room) {
    Set<Integer> beside = new TreeSet<>();
    for (int r = row(gate.y() - NEAR * side); r <= row(gate.y() + NEAR * side); r++) {
      for (int c = column(gate.x() - NEAR * side); c <= column(gate.x() + NEAR * side); c++) {
        int cell = r * columns + c;
        int piece = pieces[cell];
        if (piece >= 0 && !beside.contains(piece) && isStraight(gate, centre(cell), shut, room)) {
          beside.add(piece);
        }
      }
    }
    return beside;
  }

  private static boolean isStraight(Vec from, Vec to, List<Bounds> shut, PreparedRegion room) {
    return shut.stream().allMatch(b -> RingWindow.length(from, to, b) < 1e-6)
        && room.covers(Line.of(from, to));
  }
}
