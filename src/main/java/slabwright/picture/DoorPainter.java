package slabwright.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.fit.Homography;

/**
 * The floor from the way in at eye height: the floor through the camera's homography, walls and
 * blocks as columns, and what a sealed floor mirrors by Schlick's approximation of Fresnel's law.
 */
final class DoorPainter implements ViewPainter {
  private static final LinearColour CEILING = LinearColour.ofHex("e9e5dd");
  private static final LinearColour SKY = LinearColour.ofHex("d5dfe6");
  private static final LinearColour GROUND = LinearColour.ofHex("a19d95");

  /** Reflectance straight on of a clear film of refractive index 1.5: ((1.5 − 1) / 2.5)². */
  private static final double STRAIGHT_ON = 0.04;

  /** A rolled film is no mirror: some of what it throws back is spread out. */
  private static final double SMOOTH = 0.75;

  /** Widths of the dark rim at the foot of what stands, mm. */
  private static final double[] RIMS = {25, 55, 95, 145, 205, 275, 355, 450};

  private static final double RIM_DARK = 0.042;

  private final int width;
  private final DoorCamera camera;
  private final FloorPainter floor;
  private final StandingColumns standing;
  private final double gloss;
  private final LinearColour above;
  private final List<PixelOutline> rims = new ArrayList<>();

  DoorPainter(FloorScene scene, DoorCamera camera, int width) {
    this.width = width;
    this.camera = camera;
    Homography h = camera.toPixels(0);
    floor = new FloorPainter(scene, h, DoorCamera.NEAREST, width);
    standing = new StandingColumns(scene, camera, width);
    gloss = scene.sheen().gloss();
    above = scene.isIndoors() ? CEILING : SKY;
    for (double rim : RIMS) {
      rims.add(PixelOutline.of(rim(scene, rim), h, DoorCamera.NEAREST));
    }
  }

  private static List<Ring> rim(FloorScene scene, double mm) {
    List<Ring> all = new ArrayList<>();
    if (scene.isIndoors()) {
      all.addAll(scene.gross().minus(scene.gross().offset(-mm, 2)).rings());
    }
    for (StandingBlock b : scene.blocks()) {
      Region foot = Region.of(b.foot(), slabwright.shape.FillRule.NONZERO);
      all.addAll(foot.offset(mm, 2).rings());
    }
    return all;
  }

  @Override
  public void paint(int top, int rows, int[] argb) {
    FloorStrip s = floor.paint(top, rows);
    darken(s);
    float[] column = new float[3 * rows];
    float[] mirror = new float[3 * rows];
    float[] sum = new float[3 * rows];
    float[] thrown = new float[rows];
    float[] behind = behind(top, rows);
    for (int x = 0; x < width; x++) {
      Arrays.fill(sum, 0);
      thrownBack(s, x, thrown);
      int first = firstFloor(s, x);
      int after = afterFloor(s, x, first);
      for (int sub = 0; sub < StandingColumns.SUB; sub++) {
        int at = x * StandingColumns.SUB + sub;
        mirror(at, top, first, after, mirror);
        base(s, x, mirror, thrown, behind, column);
        for (StandingColumns.Span span : standing.seen(at)) {
          lay(span, top, rows, column);
        }
        for (int i = 0; i < sum.length; i++) {
          sum[i] += column[i] / StandingColumns.SUB;
        }
      }
      for (int y = 0; y < rows; y++) {
        // Scatter of half a step, so that a wide even wall shows no bands.
        float k = 0.997f + 0.006f * SeededNoise.low(SeededNoise.hash(x, top + y, 3));
        argb[y * width + x] =
            LinearColour.argb(k * sum[3 * y], k * sum[3 * y + 1], k * sum[3 * y + 2]);
      }
    }
  }

  /** Less light reaches the floor beside what stands. */
  private void darken(FloorStrip s) {
    float[] cover = new float[s.rows * (width + 2)];
    for (PixelOutline rim : rims) {
      if (rim.meets(s.top, s.rows, width)) {
        rim.cover(s.top, s.rows, width, cover);
        int right = rim.right(width);
        for (int y = 0; y < s.rows; y++) {
          for (int x = rim.left(); x < right; x++) {
            float c = cover[y * (width + 2) + x];
            if (c > 0) {
              float k = 1 - (float) RIM_DARK * c;
              s.r[y * width + x] *= k;
              s.g[y * width + x] *= k;
              s.b[y * width + x] *= k;
            }
          }
        }
      }
    }
  }

  /** What is seen behind the floor, by row: ground, and ceiling or sky above the horizon. */
  private float[] behind(int top, int rows) {
    float[] colours = new float[3 * rows];
    for (int y = 0; y < rows; y++) {
      double v = top + y + 0.5;
      LinearColour back = v < camera.horizon() ? above : ground(v);
      colours[3 * y] = (float) back.r();
      colours[3 * y + 1] = (float) back.g();
      colours[3 * y + 2] = (float) back.b();
    }
    return colours;
  }

  /** Shares of the light that the floor mirrors, down one column of pixels. */
  private void thrownBack(FloorStrip s, int x, float[] shares) {
    for (int y = 0; y < s.rows; y++) {
      shares[y] = s.floor[y * width + x] > 0 ? (float) thrownBack(x + 0.5, s.top + y + 0.5) : 0;
    }
  }

  /** The floor with what it mirrors, before what is behind it. */
  private void base(
      FloorStrip s, int x, float[] mirror, float[] thrown, float[] behind, float[] column) {
    for (int y = 0; y < s.rows; y++) {
      int i = y * width + x;
      float on = s.floor[i];
      if (on == 0) {
        column[3 * y] = behind[3 * y];
        column[3 * y + 1] = behind[3 * y + 1];
        column[3 * y + 2] = behind[3 * y + 2];
        continue;
      }
      float f = thrown[y];
      column[3 * y] = mixed(behind[3 * y], s.r[i] * (1 - f) + f * mirror[3 * y], on);
      column[3 * y + 1] = mixed(behind[3 * y + 1], s.g[i] * (1 - f) + f * mirror[3 * y + 1], on);
      column[3 * y + 2] = mixed(behind[3 * y + 2], s.b[i] * (1 - f) + f * mirror[3 * y + 2], on);
    }
  }

  /** Ground around the floor, hazy towards the horizon. */
  private LinearColour ground(double v) {
    double haze = 0.7 / (1 + 0.02 * (v - camera.horizon()));
    return new LinearColour(
        GROUND.r() + (above.r() - GROUND.r()) * haze,
        GROUND.g() + (above.g() - GROUND.g()) * haze,
        GROUND.b() + (above.b() - GROUND.b()) * haze);
  }

  /** Share of the light mirrored at a pixel of floor. */
  private double thrownBack(double u, double v) {
    double down = v - camera.horizon();
    double across = u - camera.middle();
    double cos = down / Math.sqrt(down * down + camera.focal() * camera.focal() + across * across);
    return gloss * mirrored(cos);
  }

  /**
   * Share of the light that a sealed floor mirrors (C. Schlick 1994).
   *
   * @param cos of the angle between the line of sight and the upright
   */
  static double mirrored(double cos) {
    double rest = 1 - cos;
    double fifth = rest * rest * rest * rest * rest;
    return STRAIGHT_ON + SMOOTH * (1 - STRAIGHT_ON) * fifth;
  }

  /** The first row of a strip that shows floor in a column; all its rows where there is none. */
  private int firstFloor(FloorStrip s, int x) {
    int y = 0;
    while (y < s.rows && s.floor[y * width + x] == 0) {
      y++;
    }
    return y;
  }

  /** The row after the last that does. */
  private int afterFloor(FloorStrip s, int x, int first) {
    int y = s.rows;
    while (y > first && s.floor[(y - 1) * width + x] == 0) {
      y--;
    }
    return y;
  }

  /** What hangs upside down under the floor, its far end blurred; of rows that show floor alone. */
  private void mirror(int at, int top, int begin, int after, float[] mirror) {
    if (begin == after) {
      return;
    }
    float r = (float) above.r();
    float g = (float) above.g();
    float b = (float) above.b();
    for (int y = begin; y < after; y++) {
      mirror[3 * y] = r;
      mirror[3 * y + 1] = g;
      mirror[3 * y + 2] = b;
    }
    for (StandingColumns.Span s : standing.mirrored(at)) {
      double blur = 1 + 0.3 * (s.to() - s.from());
      int first = (int) Math.max(top + begin, Math.floor(s.from()));
      int last = (int) Math.min(top + after - 1.0, Math.ceil(s.to() + blur));
      for (int y = first; y <= last; y++) {
        double begun = Math.max(0, Math.min(1, y + 1 - s.from()));
        double left = Math.max(0, Math.min(1, (s.to() - y - 0.5) / blur + 0.5));
        mix(mirror, y - top, s.colour(), 1, (float) (begun * left));
      }
    }
  }

  private void lay(StandingColumns.Span s, int top, int rows, float[] column) {
    int first = (int) Math.max(top, Math.floor(s.from()));
    int last = (int) Math.min(top + rows - 1.0, Math.ceil(s.to()) - 1);
    for (int y = first; y <= last; y++) {
      double share = Math.min(y + 1.0, s.to()) - Math.max(y, s.from());
      double low = (y + 0.5 - s.from()) / (s.to() - s.from());
      double light = 1 - (1 - s.dusk()) * low * low;
      mix(column, y - top, s.colour(), (float) light, (float) share);
    }
  }

  private static void mix(float[] column, int y, LinearColour c, float light, float share) {
    column[3 * y] = mixed(column[3 * y], (float) c.r() * light, share);
    column[3 * y + 1] = mixed(column[3 * y + 1], (float) c.g() * light, share);
    column[3 * y + 2] = mixed(column[3 * y + 2], (float) c.b() * light, share);
  }

  private static float mixed(float a, float b, float share) {
    return a + (b - a) * share;
  }
}
