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

  /** Size of a grain of sand, mm. */
  private static final float GRAIN = 2.5f;

  private final GroundLook look;
  private final float red;
  private final float green;
  private final float blue;
  private final float cell;
  private final float stones;
  private final float scatter;
  private final SmoothNoise clouds;
  private final SmoothNoise blotches;
  private final SmoothNoise specks;

  /** Light by channel at the last place asked. */
  float r;

  float g;
  float b;

  /** Dye taken at the last place asked, 1 for the old slab. */
  float uptake;

  GroundTexture(GroundLook look) {
    this.look = look;
    clouds = new SmoothNoise(look.seed());
    blotches = new SmoothNoise(look.seed() + 1);
    specks = new SmoothNoise(look.seed() + 6);
    red = (float) look.paste().r();
    green = (float) look.paste().g();
    blue = (float) look.paste().b();
    cell = (float) look.stone();
    stones = (float) look.stones();
    scatter = 0.68f * (float) Math.sqrt(stones);
  }

  /**
   * Looks at a place.
   *
   * @param footprint mm of floor that one pixel shows
   */
  void at(double x, double y, float footprint) {
    // Each layer of noise lies turned its own way, so that no lattice shows.
    double tx = 0.8 * x + 0.6 * y;
    double ty = 0.8 * y - 0.6 * x;
    float cloud = clouds.at(tx * (1.0 / 1300), ty * (1.0 / 1300));
    double swirl = 110.0 * cloud;
    float hand =
        0.62f * blotches.at((x + swirl) * (1.0 / 260), (y - swirl) * (1.0 / 260))
            + 0.38f * specks.at(tx * (1.0 / 95), ty * (1.0 / 95));
    float spread = look.blotches() * hand;
    float light = 1 + 0.045f * cloud + spread;
    uptake = look.uptake() * (1 + 0.16f * cloud - 1.2f * spread);
    r = red * light;
    g = green * light;
    b = blue * light;
    float far = cell > 0 ? clamp((footprint / cell - 0.35f) * 2.5f) : 1;
    if (far < 1) {
      grain(x, y, footprint);
      closer(x, y, footprint, far);
    } else {
      distant(x, y, footprint);
    }
  }

  private static float clamp(float share) {
    return Math.max(0, Math.min(1, share));
  }

  /** Sand in the paste. */
  private void grain(double x, double y, float footprint) {
    float size = Math.max(GRAIN, footprint);
    scale(1 + 0.14f * GRAIN / size * (SeededNoise.low(hash(x, y, size, 2)) - 0.5f));
  }

  private int hash(double x, double y, float size, int more) {
    double k = 1.0 / size;
    return SeededNoise.hash(SeededNoise.floor(x * k), SeededNoise.floor(y * k), look.seed() + more);
  }

  private void scale(float k) {
    r *= k;
    g *= k;
    b *= k;
  }

  /** Single stones, and as they melt into one another a share of what many look like. */
  private void closer(double x, double y, float footprint, float far) {
    float pasteR = r;
    float pasteG = g;
    float pasteB = b;
    float pasteDye = uptake;
    near(x / cell, y / cell, footprint / cell);
    if (far > 0) {
      float nearR = r;
      float nearG = g;
      float nearB = b;
      float nearDye = uptake;
      r = pasteR;
      g = pasteG;
      b = pasteB;
      uptake = pasteDye;
      distant(x, y, footprint);
      r = SeededNoise.mix(nearR, r, far);
      g = SeededNoise.mix(nearG, g, far);
      b = SeededNoise.mix(nearB, b, far);
      uptake = SeededNoise.mix(nearDye, uptake, far);
    }
  }

  /** Single stones: the nearest of the jittered middles around. */
  private void near(double x, double y, float blur) {
    int ix = SeededNoise.floor(x);
    int iy = SeededNoise.floor(y);
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
    if (SeededNoise.low(more) < stones) {
      float radius = 0.22f + 0.3f * SeededNoise.high(more);
      float edge = Math.max(0.08f, blur);
      float t = (radius - (float) Math.sqrt(best)) / edge + 0.5f;
      stone(found, Math.max(0, Math.min(1, t)));
    }
  }

  /** Many grains and stones in one pixel. */
  private void distant(double x, double y, float footprint) {
    float size = Math.max(Math.max(GRAIN, cell), footprint);
    int h = hash(x, y, size, 5);
    float sand = 0.14f * GRAIN / size * (SeededNoise.high(h) - 0.5f);
    float many = scatter * cell / size * (SeededNoise.low(h) - 0.5f);
    scale(1 - 0.07f * stones + sand + many);
    uptake *= 1 - 0.3f * stones;
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
