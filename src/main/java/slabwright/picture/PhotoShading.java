package slabwright.picture;

import java.awt.image.BufferedImage;
import java.util.Arrays;

/**
 * The light and shadow on the floor of a photo: its luminance, smoothed over some pixels so that
 * grain and small stains of the old floor go, relative to the median of all floor seen. What stands
 * before the floor has no part in it.
 */
final class PhotoShading {
  /** Pixels of the photo to a cell. */
  private static final int CELL = 4;

  /** The smoothing reaches this share of the photo's width on each side. */
  private static final double REACH = 1 / 200.0;

  /** Darker or lighter than this is left so: lamps, and black gaps. */
  private static final float LEAST = 0.06f;

  private static final float MOST = 2.5f;

  private final int columns;
  private final int rows;
  private final float[] relative;
  private final double median;

  /**
   * Reads the shading off a photo.
   *
   * @param floor share of floor seen in each pixel, row by row
   */
  PhotoShading(BufferedImage photo, FloorShare floor) {
    columns = (photo.getWidth() + CELL - 1) / CELL;
    rows = (photo.getHeight() + CELL - 1) / CELL;
    float[] light = new float[columns * rows];
    float[] weight = new float[columns * rows];
    for (int row = 0; row < rows; row++) {
      gather(photo, floor, row, light, weight);
    }
    median = median(light, weight);
    int reach = (int) Math.max(1, Math.round(photo.getWidth() * REACH / CELL));
    relative = smoothed(light, weight, reach);
  }

  /** How much of each pixel of some rows is floor. */
  interface FloorShare {
    /** Rows × width from {@code top} on. */
    float[] of(int top, int rows);
  }

  private void gather(
      BufferedImage photo, FloorShare floor, int row, float[] light, float[] weight) {
    int top = row * CELL;
    int width = photo.getWidth();
    int high = Math.min(CELL, photo.getHeight() - top);
    float[] share = floor.of(top, high);
    for (int y = 0; y < high; y++) {
      for (int x = 0; x < width; x++) {
        float w = share[y * width + x];
        if (w > 0.99f) {
          light[row * columns + x / CELL] += luminance(photo.getRGB(x, top + y));
          weight[row * columns + x / CELL] += 1;
        }
      }
    }
  }

  private static float luminance(int rgb) {
    return DECODED[rgb >> 16 & 255] * 0.2126f
        + DECODED[rgb >> 8 & 255] * 0.7152f
        + DECODED[rgb & 255] * 0.0722f;
  }

  private static final float[] DECODED = decoded();

  private static float[] decoded() {
    float[] table = new float[256];
    for (int i = 0; i < 256; i++) {
      table[i] = (float) LinearColour.decode(i);
    }
    return table;
  }

  /** Light of one part of an sRGB pixel. */
  static float light(int part) {
    return DECODED[part & 255];
  }

  /** Median of the cells that are floor; 0 when none is. */
  private static double median(float[] light, float[] weight) {
    float[] seen = new float[light.length];
    int n = 0;
    for (int i = 0; i < light.length; i++) {
      if (weight[i] > 0) {
        seen[n++] = light[i] / weight[i];
      }
    }
    Arrays.sort(seen, 0, n);
    return n == 0 ? 0 : seen[n / 2];
  }

  private float[] smoothed(float[] light, float[] weight, int reach) {
    float[] a = across(light, reach);
    float[] w = across(weight, reach);
    float[] out = new float[light.length];
    for (int x = 0; x < columns; x++) {
      for (int y = 0; y < rows; y++) {
        float sum = 0;
        float of = 0;
        for (int k = Math.max(0, y - reach); k <= Math.min(rows - 1, y + reach); k++) {
          sum += a[k * columns + x];
          of += w[k * columns + x];
        }
        float share = of > 0 && median > 0 ? (float) (sum / of / median) : 1;
        out[y * columns + x] = Math.max(LEAST, Math.min(MOST, share));
      }
    }
    return out;
  }

  private float[] across(float[] values, int reach) {
    float[] out = new float[values.length];
    for (int y = 0; y < rows; y++) {
      for (int x = 0; x < columns; x++) {
        float sum = 0;
        for (int k = Math.max(0, x - reach); k <= Math.min(columns - 1, x + reach); k++) {
          sum += values[y * columns + k];
        }
        out[y * columns + x] = sum;
      }
    }
    return out;
  }

  /** Luminance of the floor that half of what is seen of it is darker than. */
  double median() {
    return median;
  }

  /** How light it is at a pixel, 1 for the median. */
  float at(int x, int y) {
    float u = Math.max(0, Math.min(columns - 1.001f, (x + 0.5f) / CELL - 0.5f));
    float v = Math.max(0, Math.min(rows - 1.001f, (y + 0.5f) / CELL - 0.5f));
    int i = (int) u;
    int j = (int) v;
    int right = Math.min(columns - 1, i + 1);
    int down = Math.min(rows - 1, j + 1);
    float top = SeededNoise.mix(relative[j * columns + i], relative[j * columns + right], u - i);
    float low =
        SeededNoise.mix(relative[down * columns + i], relative[down * columns + right], u - i);
    return SeededNoise.mix(top, low, v - j);
  }
}
