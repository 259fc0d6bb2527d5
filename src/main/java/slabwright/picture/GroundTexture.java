package slabwright.picture;

/**
 * The look of one kind of ground at any place and from any distance; what is smaller than a pixel
 * shows as its mean with the scatter that the mean of so many has. One thread at a time: the last
 * answer is kept in the fields.
 */
final class GroundTexture {
  /** Light and dark stones by turns; their mean is near the paste, as in a plain mix. */
  private static final float[][] STONES = {
    {0.60f, 0.57f, 0.51f},
    {0.17f, 0.165f, 0.16f},
    {0.44f, 0.40f, 0.34f},
    {0.30f, 0.31f, 0.32f},
    {0.70f, 0.67f, 0.60f},
    {0.24f, 0.20f, 0.17f},
    {0.50f, 0.50f, 0.49f},
    {0.36f, 0.31f, 0.26f}
  };

  private final GroundLook look;
  private final float[] paste;

  /** Light by channel at the last place asked. */
  float r;

  float g;
  float b;

  /** Dye taken at the last place asked, 1 for the old slab. */
  float uptake;

  GroundTexture(GroundLook look) {
    this.look = look;
    LinearColour p = look.paste();
    paste = new float[] {(float) p.r(), (float) p.g(), (float) p.b()};
  }

  /**
   * Looks at a place.
   *
   * @param footprint mm of floor that one pixel shows
   */
  void at(double x, double y, float footprint) {
    float cloud = SeededNoise.value(x / 1100, y / 1100, look.seed());
    float hand = SeededNoise.value(x / 170, y / 170, look.seed() + 1);
    float light = 1 + 0.045f * cloud + look.blotches() * hand;
    uptake = look.uptake() * (1 + 0.16f * cloud - 1.2f * look.blotches() * hand);
    r = paste[0] * light;
    g = paste[1] * light;
    b = paste[2] * light;
    grain(x, y, footprint);
    if (look.stone() > 0) {
      stones(x, y, footprint);
    }
  }

  /** Sand in the paste. */
  private void grain(double x, double y, float footprint) {
    double size = Math.max(2.5, footprint);
    int h =
        SeededNoise.hash((int) Math.floor(x / size), (int) Math.floor(y / size), look.seed() + 2);
    float k = 1 + 0.07f * (float) (2.5 / size) * 2 * (SeededNoise.low(h) - 0.5f);
    scale(k);
  }

  private void scale(float k) {
    r *= k;
    g *= k;
    b *= k;
  }

  private void stones(double x, double y, float footprint) {
    float cell = (float) look.stone();
    float far = Math.max(0, Math.min(1, (footprint / cell - 0.35f) / 0.4f));
    float red = r;
    float green = g;
    float blue = b;
    float dye = uptake;
    if (far < 1) {
      near(x / cell, y / cell, footprint / cell);
    }
    if (far > 0) {
      float nearR = r;
      float nearG = g;
      float nearB = b;
      float nearDye = uptake;
      r = red;
      g = green;
      b = blue;
      uptake = dye;
      distant(x, y, Math.max(cell, footprint), cell);
      r = SeededNoise.mix(nearR, r, far);
      g = SeededNoise.mix(nearG, g, far);
      b = SeededNoise.mix(nearB, b, far);
      uptake = SeededNoise.mix(nearDye, uptake, far);
    }
  }

  /** Single stones: the nearest of the jittered middles around. */
  private void near(double x, double y, float blur) {
    int ix = (int) Math.floor(x);
    int iy = (int) Math.floor(y);
    float best = Float.MAX_VALUE;
    int found = 0;
    for (int dy = -1; dy <= 1; dy++) {
      for (int dx = -1; dx <= 1; dx++) {
        int h = SeededNoise.hash(ix + dx, iy + dy, look.seed() + 3);
        float px = (float) (ix + dx - x) + 0.15f + 0.7f * SeededNoise.low(h);
        float py = (float) (iy + dy - y) + 0.15f + 0.7f * SeededNoise.high(h);
        float flat = 0.8f + 0.4f * (h >>> 9 & 63) / 63f;
        float d = px * px * flat + py * py / flat;
        if (d < best) {
          best = d;
          found = h;
        }
      }
    }
    int more = SeededNoise.hash(found, found >>> 16, look.seed() + 4);
    if (SeededNoise.low(more) < look.stones()) {
      float radius = 0.22f + 0.3f * SeededNoise.high(more);
      float edge = Math.max(0.08f, blur);
      float t = (radius - (float) Math.sqrt(best)) / edge + 0.5f;
      stone(found, Math.max(0, Math.min(1, t)));
    }
  }

  /** Many stones in one pixel. */
  private void distant(double x, double y, double size, float cell) {
    int h =
        SeededNoise.hash((int) Math.floor(x / size), (int) Math.floor(y / size), look.seed() + 5);
    float scatter = (float) (cell / size) * 0.42f * (float) Math.sqrt(look.stones());
    scale(1 - 0.07f * (float) look.stones() + scatter * 2 * (SeededNoise.low(h) - 0.5f));
    uptake *= 1 - 0.3f * (float) look.stones();
  }

  private void stone(int hash, float share) {
    float[] colour = STONES[hash >>> 4 & 7];
    float own = 0.9f + 0.2f * (hash >>> 20 & 15) / 15f;
    r = SeededNoise.mix(r, colour[0] * own, share);
    g = SeededNoise.mix(g, colour[1] * own, share);
    b = SeededNoise.mix(b, colour[2] * own, share);
    uptake *= 1 - 0.6f * share;
  }
}
