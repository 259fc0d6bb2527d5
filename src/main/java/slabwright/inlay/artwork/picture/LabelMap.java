package slabwright.inlay.artwork.picture;

/**
 * Which colour of the palette each pixel belongs to most.
 *
 * @param label number of a colour, row by row
 */
@SuppressWarnings("ArrayRecordComponent")
record LabelMap(int width, int height, byte[] label, int[] palette) {
  /** What lies beyond the picture. */
  static final int OUTSIDE = -1;

  int at(int x, int y) {
    return x < 0 || y < 0 || x >= width || y >= height ? OUTSIDE : label[y * width + x];
  }

  int colour(int label) {
    return palette[label];
  }
}
