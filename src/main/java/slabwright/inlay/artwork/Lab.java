package slabwright.inlay.artwork;

/**
 * CIE L*a*b* of an sRGB colour: IEC 61966-2-1 (linearising, primaries, D65 white), CIE 15 (L*a*b*).
 * A screen colour stands in for a dye; the dye on the slab must be seen on a test patch.
 */
public record Lab(double l, double a, double b) {
  private static final double EPSILON = 216.0 / 24389;
  private static final double KAPPA = 24389.0 / 27;

  /** The colour written as #rrggbb. */
  public static Lab of(String hex) {
    Rgba c = Rgba.ofHex(hex);
    double r = linear(c.r());
    double g = linear(c.g());
    double b = linear(c.b());
    double fx = f((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.9504700);
    double fy = f(0.2126729 * r + 0.7151522 * g + 0.0721750 * b);
    double fz = f((0.0193339 * r + 0.1191920 * g + 0.9503041 * b) / 1.0888300);
    return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
  }

  private static double linear(int channel) {
    double v = channel / 255.0;
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }

  private static double f(double t) {
    return t > EPSILON ? Math.cbrt(t) : (KAPPA * t + 16) / 116;
  }

  /** The colour difference of CIE 1976: the straight distance. */
  public double deltaE(Lab o) {
    return Math.sqrt((l - o.l) * (l - o.l) + (a - o.a) * (a - o.a) + (b - o.b) * (b - o.b));
  }
}
