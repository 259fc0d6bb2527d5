package slabwright.inlay.artwork.picture;

import slabwright.inlay.artwork.Rgba;
import slabwright.units.CieLab;

/**
 * Colours packed as {@code 0xrrggbb}, and how two of them are mixed in a pixel on an edge. Mixing
 * is judged in the picture's own values, since that is what smooths edges; brightness counts twice
 * as much as tint, since JPEG keeps tint at half the fineness (ITU-T T.871 for the transform).
 */
final class PixelColour {
  /** Weight of a tint channel's square against brightness's. */
  private static final double TINT = 0.25;

  private PixelColour() {}

  static String hex(int rgb) {
    return "#%06x".formatted(rgb & 0xffffff);
  }

  static CieLab lab(int rgb) {
    return CieLab.ofHex(hex(rgb));
  }

  static int packed(double r, double g, double b) {
    return byteOf(r) << 16 | byteOf(g) << 8 | byteOf(b);
  }

  static int packed(String hex) {
    Rgba c = Rgba.ofHex(hex);
    return packed(c.r(), c.g(), c.b());
  }

  private static int byteOf(double v) {
    return (int) Math.max(0, Math.min(255, Math.rint(v)));
  }

  /** The weighted product of two differences of colours, each given by its three channels. */
  private static double product(double r1, double g1, double b1, double r2, double g2, double b2) {
    double y1 = 0.299 * r1 + 0.587 * g1 + 0.114 * b1;
    double y2 = 0.299 * r2 + 0.587 * g2 + 0.114 * b2;
    double u = (b1 - y1) * 0.564 * ((b2 - y2) * 0.564);
    double v = (r1 - y1) * 0.713 * ((r2 - y2) * 0.713);
    return y1 * y2 + TINT * (u + v);
  }

  /** The square of how far two colours are apart. */
  static double distance(int p, int q) {
    double r = red(p) - red(q);
    double g = green(p) - green(q);
    double b = blue(p) - blue(q);
    return product(r, g, b, r, g, b);
  }

  /** How much of {@code b} is in {@code c}, from 0 (it is {@code a}) to 1, and beyond. */
  static double share(int c, int a, int b) {
    double r = red(b) - red(a);
    double g = green(b) - green(a);
    double u = blue(b) - blue(a);
    double whole = product(r, g, u, r, g, u);
    double part = product(red(c) - red(a), green(c) - green(a), blue(c) - blue(a), r, g, u);
    return whole > 0 ? part / whole : 0;
  }

  /** The square of how far {@code c} is from the nearest mixture of {@code a} and {@code b}. */
  static double offMixture(int c, int a, int b) {
    double t = Math.max(0, Math.min(1, share(c, a, b)));
    double r = red(c) - red(a) - t * (red(b) - red(a));
    double g = green(c) - green(a) - t * (green(b) - green(a));
    double u = blue(c) - blue(a) - t * (blue(b) - blue(a));
    return product(r, g, u, r, g, u);
  }

  static int red(int p) {
    return p >> 16 & 255;
  }

  static int green(int p) {
    return p >> 8 & 255;
  }

  static int blue(int p) {
    return p & 255;
  }
}
