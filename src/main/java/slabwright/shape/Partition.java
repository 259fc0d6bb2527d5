package slabwright.shape;

/** Disjoint sets of numbers that can be joined (union-find with path halving). */
final class Partition {
  private final int[] parents;

  Partition(int size) {
    parents = new int[size];
    for (int i = 0; i < size; i++) {
      parents[i] = i;
    }
  }

  int root(int i) {
    int at = i;
    while (parents[at] != at) {
      parents[at] = parents[parents[at]];
      at = parents[at];
    }
    return at;
  }

  void join(int a, int b) {
    int ra = root(a);
    int rb = root(b);
    parents[Math.max(ra, rb)] = Math.min(ra, rb);
  }
}
