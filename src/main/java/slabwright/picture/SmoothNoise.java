package slabwright.picture;

/**
 * Smooth noise between −1 and 1 with about one hill a unit. Neighbouring places are asked one after
 * the other, so the corners of the last lattice cell are kept; the answer hangs on the place alone.
 * One thread at a time.
 */
final class SmoothNoise {
  private final int seed;
  private int ix = Integer.MIN_VALUE;
  private int iy = Integer.MIN_VALUE;
  private float lowLeft;
  private float lowRight;
  private float highLeft;
  private float highRight;

  SmoothNoise(int seed) {
    this.seed = seed;
  }

  float at(double x, double y) {
    int nx = SeededNoise.floor(x);
    int ny = SeededNoise.floor(y);
    if (nx != ix || ny != iy) {
      ix = nx;
      iy = ny;
      lowLeft = corner(nx, ny);
      lowRight = corner(nx + 1, ny);
      highLeft = corner(nx, ny + 1);
      highRight = corner(nx + 1, ny + 1);
    }
    float u = smooth((float) (x - nx));
    float v = smooth((float) (y - ny));
    float low = SeededNoise.mix(lowLeft, lowRight, u);
    return SeededNoise.mix(low, SeededNoise.mix(highLeft, highRight, u), v);
  }

  private float corner(int x, int y) {
    return 2 * SeededNoise.low(SeededNoise.hash(x, y, seed)) - 1;
  }

  private static float smooth(float t) {
    return t * t * (3 - 2 * t);
  }
}
