package slabwright.picture;

/** What a film of dye lets through, by how much of it the ground takes; a table, for speed. */
final class DyeTable {
  /** Steps for each whole uptake. */
  private static final int STEPS = 128;

  private static final int MOST = 3;

  private final float[] r = new float[STEPS * MOST + 1];
  private final float[] g = new float[STEPS * MOST + 1];
  private final float[] b = new float[STEPS * MOST + 1];

  DyeTable(LinearColour transmission) {
    for (int i = 0; i < r.length; i++) {
      LinearColour t = transmission.power(i / (double) STEPS);
      r[i] = (float) t.r();
      g[i] = (float) t.g();
      b[i] = (float) t.b();
    }
  }

  /**
   * Lays the film over a strip.
   *
   * @param outline that {@code cover} is of
   * @param cover share of each pixel under dye, rows two longer than the strip's
   * @param everywhere whether all floor is dyed, whatever {@code cover} says of pixels at its rim
   */
  void filter(
      FloorStrip strip, PixelOutline outline, float[] cover, float[] uptake, boolean everywhere) {
    int width = strip.width;
    int right = outline.right(width);
    for (int y = 0; y < strip.rows; y++) {
      for (int x = outline.left(); x < right; x++) {
        float share = cover[y * (width + 2) + x];
        if (share > 0) {
          int i = y * width + x;
          float c = everywhere ? 1 : share;
          int step = Math.min(r.length - 1, Math.max(0, (int) (uptake[i] * STEPS + 0.5f)));
          strip.r[i] *= 1 + c * (r[step] - 1);
          strip.g[i] *= 1 + c * (g[step] - 1);
          strip.b[i] *= 1 + c * (b[step] - 1);
        }
      }
    }
  }
}
