package slabwright.inlay.artwork.picture;

/** Directions along the grid between pixels, y down, and the pixels on both sides of a step. */
final class PixelEdge {
  static final int RIGHT = 0;
  static final int DOWN = 1;
  static final int LEFT = 2;
  static final int UP = 3;

  private static final int[] DX = {1, 0, -1, 0};
  private static final int[] DY = {0, 1, 0, -1};

  /** From a grid corner to the pixel on the left of a step in each direction. */
  private static final int[] LEFT_X = {0, 0, -1, -1};

  private static final int[] LEFT_Y = {-1, 0, 0, -1};

  private PixelEdge() {}

  static int dx(int direction) {
    return DX[direction];
  }

  static int dy(int direction) {
    return DY[direction];
  }

  static int back(int direction) {
    return (direction + 2) % 4;
  }

  /** What lies on the left of a step from a grid corner. */
  static int onLeft(LabelMap map, int x, int y, int direction) {
    return map.at(x + LEFT_X[direction], y + LEFT_Y[direction]);
  }

  static int onRight(LabelMap map, int x, int y, int direction) {
    int next = (direction + 1) % 4;
    return map.at(x + LEFT_X[next], y + LEFT_Y[next]);
  }

  static boolean parts(LabelMap map, int x, int y, int direction) {
    return onLeft(map, x, y, direction) != onRight(map, x, y, direction);
  }
}
