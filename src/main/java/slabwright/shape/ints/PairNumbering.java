package slabwright.shape.ints;

import java.util.Arrays;

/**
 * Numbers pairs of whole numbers in the order they are first met: corners by their grid
 * coordinates, edges by their two corners. A plain hash map would hold half a million boxes.
 */
public final class PairNumbering {
  private long[] firsts = new long[16];
  private long[] seconds = new long[16];
  private int[] slots = new int[64];
  private int size;

  /** The number of the pair, a new one when it was not met before. */
  public int numberOf(long first, long second) {
    int slot = slotOf(first, second);
    if (slots[slot] != 0) {
      return slots[slot] - 1;
    }
    if (size == firsts.length) {
      firsts = Arrays.copyOf(firsts, size * 2);
      seconds = Arrays.copyOf(seconds, size * 2);
    }
    firsts[size] = first;
    seconds[size] = second;
    slots[slot] = ++size;
    if (size * 2 > slots.length) {
      rehash();
    }
    return size - 1;
  }

  public int size() {
    return size;
  }

  public long first(int number) {
    return firsts[number];
  }

  public long second(int number) {
    return seconds[number];
  }

  private int slotOf(long first, long second) {
    int mask = slots.length - 1;
    int slot = hash(first, second) & mask;
    while (slots[slot] != 0
        && (firsts[slots[slot] - 1] != first || seconds[slots[slot] - 1] != second)) {
      slot = (slot + 1) & mask;
    }
    return slot;
  }

  private void rehash() {
    slots = new int[slots.length * 2];
    for (int i = 0; i < size; i++) {
      slots[slotOf(firsts[i], seconds[i])] = i + 1;
    }
  }

  private static int hash(long a, long b) {
    long h = a * 0x9E3779B97F4A7C15L + b;
    h = (h ^ (h >>> 32)) * 0xD6E8FEB86659FD93L;
    return (int) (h ^ (h >>> 32));
  }
}
