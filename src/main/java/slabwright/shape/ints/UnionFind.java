package slabwright.shape.ints;

/** Disjoint sets of numbers that can be joined (union-find with path halving). */
public final class UnionFind {
  private final int[] parents;

  public UnionFind(int size) {
    parents = new int[size];
    for (int i = 0; i < size; i++) {
      parents[i] = i;
    }
  }

  public int root(int i) {
    int at = i;
    while (parents[at] != at) {
      parents[at] = parents[parents[at]];
      at = parents[at];
    }
    return at;
  }

  public void join(int a, int b) {
    int ra = root(a);
    int rb = root(b);
    parents[Math.max(ra, rb)] = Math.min(ra, rb);
  }
}
