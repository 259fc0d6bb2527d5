package slabwright.units;

/**
 * A colour in CIE L*a*b* (CIE 15), white D65, and how far two colours are apart to the eye. A
 * screen colour stands in for a dye; the dye on the slab must be seen on a test patch.
 *
 * @param l lightness, 0 black to 100 white
 * @param a green (below 0) to red
 * @param b blue (below 0) to yellow
 */
public record CieLab(double l, double a, double b) {
  private static final double EPSILON = 216.0 / 24389;
  private static final double KAPPA = 24389.0 / 27;
  private static final double POW_25_7 = Math.pow(25, 7);

  /** Of sRGB (IEC 61966-2-1) written as six hexadecimal digits, with or without a number sign. */
  public static CieLab ofHex(String hex) {
    int rgb = Integer.parseInt(hex.startsWith("#") ? hex.substring(1) : hex, 16);
    double r = linear((rgb >> 16) & 255);
    double g = linear((rgb >> 8) & 255);
    double b = linear(rgb & 255);
    double fx = f((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.9504700);
    double fy = f(0.2126729 * r + 0.7151522 * g + 0.0721750 * b);
    double fz = f((0.0193339 * r + 0.1191920 * g + 0.9503041 * b) / 1.0888300);
    return new CieLab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
  }

  private static double linear(int part) {
    double v = part / 255.0;
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }

  private static double f(double t) {
    return t > EPSILON ? Math.cbrt(t) : (KAPPA * t + 16) / 116;
  }

  /** The same hue and strength at another lightness, the strength scaled with it. */
  CieLab atLightness(double lightness, double strength) {
    return new CieLab(lightness, a * strength, b * strength);
  }

  /** The colour difference of CIE 1976: the straight distance. */
  public double deltaE(CieLab o) {
    return Math.sqrt((l - o.l) * (l - o.l) + (a - o.a) * (a - o.a) + (b - o.b) * (b - o.b));
  }

  /**
   * The colour difference CIEDE2000 with all weights 1, after G. Sharma, W. Wu, E. Dalal, *Color
   * Research and Application* 30 (2005) 21–30.
   */
  double difference(CieLab o) {
    double mean = (Math.hypot(a, b) + Math.hypot(o.a, o.b)) / 2;
    double g = 0.5 * (1 - Math.sqrt(Math.pow(mean, 7) / (Math.pow(mean, 7) + POW_25_7)));
    double a1 = (1 + g) * a;
    double a2 = (1 + g) * o.a;
    double c1 = Math.hypot(a1, b);
    double c2 = Math.hypot(a2, o.b);
    double h1 = hue(a1, b);
    double h2 = hue(a2, o.b);
    double dh = c1 * c2 == 0 ? 0 : turn(h2 - h1);
    double dH = 2 * Math.sqrt(c1 * c2) * Math.sin(Math.toRadians(dh / 2));
    double h = c1 * c2 == 0 ? h1 + h2 : meanHue(h1, h2);
    double lm = (l + o.l) / 2;
    double cm = (c1 + c2) / 2;
    double t =
        1 - 0.17 * cos(h - 30) + 0.24 * cos(2 * h) + 0.32 * cos(3 * h + 6) - 0.20 * cos(4 * h - 63);
    double sl = 1 + 0.015 * square(lm - 50) / Math.sqrt(20 + square(lm - 50));
    double sc = 1 + 0.045 * cm;
    double sh = 1 + 0.015 * cm * t;
    double rc = 2 * Math.sqrt(Math.pow(cm, 7) / (Math.pow(cm, 7) + POW_25_7));
    double twist = 30 * Math.exp(-square((h - 275) / 25));
    double rt = -Math.sin(Math.toRadians(2 * twist)) * rc;
    double x = (o.l - l) / sl;
    double y = (c2 - c1) / sc;
    double z = dH / sh;
    return Math.sqrt(x * x + y * y + z * z + rt * y * z);
  }

  private static double hue(double a, double b) {
    if (a == 0 && b == 0) {
      return 0;
    }
    double h = Math.toDegrees(Math.atan2(b, a));
    return h < 0 ? h + 360 : h;
  }

  /** A turn in degrees the shorter way round. */
  private static double turn(double dh) {
    return dh > 180 ? dh - 360 : dh < -180 ? dh + 360 : dh;
  }

  private static double meanHue(double h1, double h2) {
    if (Math.abs(h1 - h2) <= 180) {
      return (h1 + h2) / 2;
    }
    return h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
  }

  private static double cos(double degrees) {
    return Math.cos(Math.toRadians(degrees));
  }

  private static double square(double x) {
    return x * x;
  }
}
