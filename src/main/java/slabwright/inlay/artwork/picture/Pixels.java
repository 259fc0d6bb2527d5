package slabwright.inlay.artwork.picture;

/**
 * An upright picture without see-through parts.
 *
 * @param rgb {@code 0xrrggbb}, row by row from the top left
 * @param seeThrough {@code 0xrrggbb} that was put where the file is see-through, and that no solid
 *     pixel comes near; -1 when nothing is see-through
 * @param thinned pixels of the file along one side of each of these
 */
@SuppressWarnings("ArrayRecordComponent")
record Pixels(int width, int height, int[] rgb, int seeThrough, int thinned) {
  int at(int x, int y) {
    return rgb[y * width + x];
  }

  int count() {
    return width * height;
  }
}
