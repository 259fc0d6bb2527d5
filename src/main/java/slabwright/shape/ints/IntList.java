package slabwright.shape.ints;

import java.util.Arrays;

/** A growing list of ints. */
public final class IntList {
  private int[] values = new int[16];
  private int size;

  public void add(int v) {
    if (size == values.length) {
      values = Arrays.copyOf(values, size * 2);
    }
    values[size++] = v;
  }

  public int get(int i) {
    return values[i];
  }

  public int size() {
    return size;
  }

  public void clear() {
    size = 0;
  }

  public int removeLast() {
    return values[--size];
  }

  public int[] toArray() {
    return Arrays.copyOf(values, size);
  }
}
