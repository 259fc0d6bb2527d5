package slabwright.inlay.stencil;

/**
 * CIE L* of an sRGB colour: 0 is black, 100 is the white of the screen.
 *
 * <p>sRGB by IEC 61966-2-1 (decoding curve, luminance 0.2126 R + 0.7152 G + 0.0722 B), L* by CIE 15
 * with the exact constants 216/24389 and 24389/27. A screen colour stands in for a dye; the dye on
 * the slab must be seen on a test patch.
 */
public final class Lightness {
  private static final double KNEE = 216.0 / 24389;
  private static final double SLOPE = 24389.0 / 27;

  private Lightness() {}

  /** L* of a colour given as 0xRRGGBB. */
  public static double of(int rgb) {
    double y =
        0.2126 * linear(rgb >> 16 & 0xff)
            + 0.7152 * linear(rgb >> 8 & 0xff)
            + 0.0722 * linear(rgb & 0xff);
    return y > KNEE ? 116 * Math.cbrt(y) - 16 : SLOPE * y;
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
