package slabwright.drawing;

import java.util.Locale;

/** An opaque sRGB colour, each part 0 to 255. */
public record Colour(int red, int green, int blue) {
  public Colour {
    if ((red | green | blue) < 0 || red > 255 || green > 255 || blue > 255) {
      throw new IllegalArgumentException("a colour part lies between 0 and 255");
    }
  }

  /** From six hexadecimal digits, such as {@code 1d2326}. */
  public static Colour hex(String digits) {
    int rgb = Integer.parseInt(digits, 16);
    return new Colour((rgb >> 16) & 255, (rgb >> 8) & 255, rgb & 255);
  }

  /** The CSS form, such as {@code #1d2326}. */
  public String css() {
    return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
  }

  /** This colour with the share (0 to 1) of the other mixed in, part by part. */
  public Colour mixed(Colour other, double share) {
    return new Colour(
        mix(red, other.red, share), mix(green, other.green, share), mix(blue, other.blue, share));
  }

  /**
   * Relative luminance, 0 for black to 1 for white (WCAG 2.1, definition of relative luminance).
   */
  public double luminance() {
    return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
  }

  /** Contrast ratio against another colour, 1 to 21 (WCAG 2.1). */
  public double contrast(Colour other) {
    double light = Math.max(luminance(), other.luminance());
    double dark = Math.min(luminance(), other.luminance());
    return (light + 0.05) / (dark + 0.05);
  }

  private static int mix(int a, int b, double share) {
    return (int) Math.round(a + (b - a) * share);
  }

  private static double linear(int part) {
    double c = part / 255.0;
    return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
