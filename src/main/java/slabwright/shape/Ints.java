package slabwright.shape;

import java.util.Arrays;

/** A growing list of ints. */
final class Ints {
  private int[] values = new int[16];
  private int size;

  void add(int v) {
    if (size == values.length) {
      values = Arrays.copyOf(values, size * 2);
    }
    values[size++] = v;
  }

  int get(int i) {
    return values[i];
  }

  int size() {
    return size;
  }

  int removeLast() {
    return values[--size];
  }

  int[] toArray() {
    return Arrays.copyOf(values, size);
  }
}
