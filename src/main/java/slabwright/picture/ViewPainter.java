package slabwright.picture;

/** Paints rows of one picture; each row hangs on nothing but its number. */
interface ViewPainter {
  /**
   * Paints {@code rows} rows from {@code top} on.
   *
   * @param argb rows × width of the picture, not premultiplied, filled row by row
   */
  void paint(int top, int rows, int[] argb);
}
