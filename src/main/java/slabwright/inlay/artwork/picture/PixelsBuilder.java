package slabwright.inlay.artwork.picture;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;
import slabwright.units.Message;

/**
 * Makes pixels that can be traced: squared by four points, see-through parts laid on a colour, and
 * no more of them than tell anything.
 */
final class PixelsBuilder {
  /** More pixels than this only cost time: neighbours are brought together. */
  private static final int ENOUGH = 12_000_000;

  /** See-through enough to show what is behind. */
  private static final int CLEAR = 8;

  /** A share of see-through pixels that makes a background of them. */
  private static final double MUCH = 0.005;

  /** Colours that a background may be given, when none is asked. */
  private static final int[] BACKGROUNDS = {0xffffff, 0x000000, 0xff00ff, 0x00ff00, 0x808080};

  private static final int APART = 24;

  private PixelsBuilder() {}

  /**
   * The pixels.
   *
   * @param background asked, {@code #rrggbb}
   * @param corners as in {@link TraceSettings}
   */
  static Pixels of(BufferedImage image, Optional<String> background, List<Vec> corners) {
    BufferedImage flat = corners.isEmpty() ? image : squared(image, corners);
    int step = 1;
    while ((long) (flat.getWidth() / step) * (flat.getHeight() / step) > ENOUGH) {
      step++;
    }
    int w = flat.getWidth() / step;
    int h = flat.getHeight() / step;
    if (w < 2 || h < 2) {
      throw new RefusedArtworkException(
          Reason.ABSURD_SIZE, Message.of("inlay.pixels-builder.too-small", w, h));
    }
    int clear = flat.getColorModel().hasAlpha() ? clear(flat) : 0;
    boolean seeThrough = clear > MUCH * flat.getWidth() * flat.getHeight();
    int behind =
        background
            .map(PixelColour::packed)
            .orElseGet(() -> seeThrough ? unlike(flat) : BACKGROUNDS[0]);
    int[] rgb = new int[w * h];
    int[] rows = new int[flat.getWidth() * step];
    for (int y = 0; y < h; y++) {
      flat.getRGB(0, y * step, flat.getWidth(), step, rows, 0, flat.getWidth());
      for (int x = 0; x < w; x++) {
        rgb[y * w + x] = mean(rows, flat.getWidth(), x * step, step, behind);
      }
    }
    return new Pixels(w, h, rgb, seeThrough ? behind : -1, step);
  }

  private static int mean(int[] rows, int width, int x, int step, int behind) {
    if (step == 1 && rows[x] >>> 24 == 255) {
      return rows[x] & 0xffffff;
    }
    double r = 0;
    double g = 0;
    double b = 0;
    for (int v = 0; v < step; v++) {
      for (int u = 0; u < step; u++) {
        int p = rows[v * width + x + u];
        double a = (p >>> 24) / 255.0;
        r += a * PixelColour.red(p) + (1 - a) * PixelColour.red(behind);
        g += a * PixelColour.green(p) + (1 - a) * PixelColour.green(behind);
        b += a * PixelColour.blue(p) + (1 - a) * PixelColour.blue(behind);
      }
    }
    double n = (double) step * step;
    return PixelColour.packed(r / n, g / n, b / n);
  }

  private static int clear(BufferedImage image) {
    int clear = 0;
    int[] row = new int[image.getWidth()];
    for (int y = 0; y < image.getHeight(); y++) {
      image.getRGB(0, y, row.length, 1, row, 0, row.length);
      for (int p : row) {
        clear += p >>> 24 < CLEAR ? 1 : 0;
      }
    }
    return clear;
  }

  /** The background that the solid pixels come least near to. */
  private static int unlike(BufferedImage image) {
    double[] least = new double[BACKGROUNDS.length];
    java.util.Arrays.fill(least, Double.MAX_VALUE);
    int step = Math.max(1, Math.min(image.getWidth(), image.getHeight()) / (APART * APART));
    for (int y = 0; y < image.getHeight(); y += step) {
      for (int x = 0; x < image.getWidth(); x += step) {
        int p = image.getRGB(x, y);
        for (int k = 0; p >>> 24 > 200 && k < least.length; k++) {
          least[k] = Math.min(least[k], PixelColour.distance(p & 0xffffff, BACKGROUNDS[k]));
        }
      }
    }
    int best = 0;
    for (int k = 1; k < least.length; k++) {
      best = least[k] > least[best] ? k : best;
    }
    return BACKGROUNDS[best];
  }

  /** The sign between four corners as seen straight on, its sides as long as in the photo. */
  private static BufferedImage squared(BufferedImage image, List<Vec> corners) {
    double across = (side(corners, 0) + side(corners, 2)) / 2;
    double down = (side(corners, 1) + side(corners, 3)) / 2;
    int w = (int) Math.rint(across);
    int h = (int) Math.rint(down);
    List<Vec> square = List.of(new Vec(0, 0), new Vec(w, 0), new Vec(w, h), new Vec(0, h));
    Homography back =
        Homography.of(square, corners)
            .filter(m -> w >= 2 && h >= 2 && corners.stream().allMatch(c -> inside(image, c)))
            .orElseThrow(
                () ->
                    new RefusedArtworkException(
                        Reason.ABSURD_SIZE, Message.of("inlay.pixels-builder.corners")));
    BufferedImage out = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        out.setRGB(x, y, between(image, back.apply(new Vec(x + 0.5, y + 0.5))));
      }
    }
    return out;
  }

  private static boolean inside(BufferedImage image, Vec p) {
    return p.x() >= 0 && p.y() >= 0 && p.x() <= image.getWidth() && p.y() <= image.getHeight();
  }

  private static double side(List<Vec> corners, int i) {
    return corners.size() == 4 ? corners.get(i).distanceTo(corners.get((i + 1) % 4)) : 0;
  }

  private static int between(BufferedImage image, Vec p) {
    double u = Math.max(0, Math.min(image.getWidth() - 1.001, p.x() - 0.5));
    double v = Math.max(0, Math.min(image.getHeight() - 1.001, p.y() - 0.5));
    int x = (int) u;
    int y = (int) v;
    double[] sum = new double[3];
    for (int k = 0; k < 4; k++) {
      int c = image.getRGB(x + k % 2, y + k / 2);
      double weight = (k % 2 == 0 ? 1 - (u - x) : u - x) * (k / 2 == 0 ? 1 - (v - y) : v - y);
      sum[0] += weight * PixelColour.red(c);
      sum[1] += weight * PixelColour.green(c);
      sum[2] += weight * PixelColour.blue(c);
    }
    return PixelColour.packed(sum[0], sum[1], sum[2]);
  }
}
