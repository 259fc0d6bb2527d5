package slabwright.inlay.artwork.picture;

import slabwright.shape.ints.IntList;

/** Gives spots smaller than an area to the colour that they touch most. */
final class SpeckRemoval {
  /** The four neighbours at the sides, then those at the corners. */
  private static final int[] DX = {1, 0, -1, 0, 1, -1, 1, -1};

  private static final int[] DY = {0, 1, 0, -1, 1, 1, -1, -1};
  private static final int SIDES = 4;

  private final LabelMap map;
  private final double least;
  private final boolean[] seen;
  private int removed;

  private SpeckRemoval(LabelMap map, double least) {
    this.map = map;
    this.least = least;
    this.seen = new boolean[map.label().length];
  }

  /**
   * Removes specks in place.
   *
   * @param least area in pixels of the smallest spot that stays
   * @return how many specks went
   */
  static int run(LabelMap map, double least) {
    SpeckRemoval removal = new SpeckRemoval(map, least);
    for (int i = 0; i < removal.seen.length; i++) {
      if (!removal.seen[i]) {
        removal.spot(i);
      }
    }
    return removal.removed;
  }

  private void spot(int start) {
    int w = map.width();
    byte[] label = map.label();
    int mine = label[start];
    IntList members = new IntList();
    int[] beside = new int[map.palette().length];
    members.add(start);
    seen[start] = true;
    // a large spot is walked whole, only so that it is not walked again
    for (int k = 0; k < members.size(); k++) {
      int i = members.get(k);
      int x = i % w;
      for (int d = 0; d < DX.length; d++) {
        int j = i + DY[d] * w + DX[d];
        if (x + DX[d] < 0 || x + DX[d] >= w || j < 0 || j >= label.length) {
          continue;
        }
        if (label[j] == mine) {
          if (!seen[j]) {
            seen[j] = true;
            members.add(j);
          }
        } else if (d < SIDES) {
          beside[label[j]]++;
        }
      }
    }
    if (members.size() < least) {
      give(members, beside);
    }
  }

  private void give(IntList members, int[] beside) {
    int most = 0;
    for (int k = 1; k < beside.length; k++) {
      most = beside[k] > beside[most] ? k : most;
    }
    if (beside[most] > 0) {
      removed++;
      for (int k = 0; k < members.size(); k++) {
        map.label()[members.get(k)] = (byte) most;
      }
    }
  }
}
