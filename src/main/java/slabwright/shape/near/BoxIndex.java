package slabwright.shape.near;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/**
 * Things by the boxes that they lie in; what is asked looks only at those whose boxes come near.
 *
 * <p>Square cells in layers, each of twice the size of those below. A thing lies in the cell of its
 * box's lowest corner, in the layer whose cells are as large as its box or up to twice as large. A
 * quadtree keeps what lies over its middle lines at the top, where every question meets it: four
 * times the things cost it seven times the looks.
 */
public final class BoxIndex<T> {
  /** So that rounding never leaves out what touches. */
  private static final double SLACK = 1e-6;

  /** Cells are 2⁰ wide and more. */
  private static final int LEAST = 0;

  private record Cell(long column, long row) {}

  private record Entry<T>(Bounds box, T thing) {}

  private final Map<Integer, Map<Cell, List<Entry<T>>>> layers = new TreeMap<>();
  private int looked;

  /** Things at places. */
  public static <T> BoxIndex<T> of(List<T> things, Function<T, Vec> place) {
    BoxIndex<T> index = new BoxIndex<>();
    things.forEach(t -> index.add(Bounds.of(List.of(place.apply(t))), t));
    return index;
  }

  /** Adds a thing; one whose box is empty is never near to anything. */
  public void add(Bounds box, T thing) {
    if (!box.isEmpty()) {
      int level = Math.max(LEAST, Math.getExponent(Math.max(box.width(), box.height())) + 1);
      double size = Math.scalb(1.0, level);
      layers
          .computeIfAbsent(level, k -> new HashMap<>())
          .computeIfAbsent(
              new Cell(index(box.minX(), size), index(box.minY(), size)), k -> new ArrayList<>())
          .add(new Entry<>(box, thing));
    }
  }

  /** Whether one of the things whose boxes meet the box, or nearly do, passes the test. */
  public boolean any(Bounds near, Predicate<T> test) {
    if (near.isEmpty()) {
      return false;
    }
    Bounds box = near.grown(SLACK);
    // Loops, as labels ask this for every place that they try.
    for (Map.Entry<Integer, Map<Cell, List<Entry<T>>>> layer : layers.entrySet()) {
      if (any(layer.getValue(), Math.scalb(1.0, layer.getKey()), box, test)) {
        return true;
      }
    }
    return false;
  }

  private boolean any(Map<Cell, List<Entry<T>>> cells, double size, Bounds box, Predicate<T> test) {
    long left = index(box.minX(), size) - 1;
    long right = index(box.maxX(), size);
    long low = index(box.minY(), size) - 1;
    long high = index(box.maxY(), size);
    if ((double) (right - left + 1) * (high - low + 1) > cells.size()) {
      for (List<Entry<T>> cell : cells.values()) {
        if (any(cell, box, test)) {
          return true;
        }
      }
      return false;
    }
    for (long column = left; column <= right; column++) {
      for (long row = low; row <= high; row++) {
        if (any(cells.getOrDefault(new Cell(column, row), List.of()), box, test)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean any(List<Entry<T>> cell, Bounds box, Predicate<T> test) {
    for (Entry<T> e : cell) {
      looked++;
      if (e.box.meets(box) && test.test(e.thing)) {
        return true;
      }
    }
    return false;
  }

  /** How many things were looked at in all so far. */
  public int looked() {
    return looked;
  }

  private static long index(double v, double size) {
    return (long) Math.floor(v / size);
  }
}
