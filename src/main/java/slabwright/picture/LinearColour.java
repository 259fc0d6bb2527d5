package slabwright.picture;

/**
 * Light by channel, proportional to energy; 1 is the white of the screen. Colours mix and dye
 * filters in this scale alone. Transfer function and its limits: IEC 61966-2-1 (sRGB).
 */
record LinearColour(double r, double g, double b) {
  private static final int STEPS = 4096;
  private static final byte[] ENCODED = encoded();

  /** From sRGB as {@code #rrggbb}, with or without the sign. */
  static LinearColour ofHex(String hex) {
    int v = Integer.parseInt(hex.startsWith("#") ? hex.substring(1) : hex, 16);
    return new LinearColour(decode(v >> 16 & 255), decode(v >> 8 & 255), decode(v & 255));
  }

  /** Light of one sRGB part of 0 to 255. */
  static double decode(int part) {
    double v = part / 255.0;
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }

  /** The sRGB part, 0 to 255, of some light; light beyond white is white. */
  static double encode(double light) {
    double v = Math.max(0, Math.min(1, light));
    return 255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055);
  }

  /** Opaque sRGB as {@code 0xffrrggbb}; a table holds square roots, where the eye is even. */
  static int argb(float r, float g, float b) {
    return 0xff000000 | part(r) << 16 | part(g) << 8 | part(b);
  }

  int argb() {
    return argb((float) r, (float) g, (float) b);
  }

  private static int part(float light) {
    float v = light > 0 ? light < 1 ? light : 1 : 0;
    return ENCODED[(int) (Math.sqrt(v) * (STEPS - 1) + 0.5)] & 255;
  }

  private static byte[] encoded() {
    byte[] table = new byte[STEPS];
    for (int i = 0; i < STEPS; i++) {
      double root = i / (STEPS - 1.0);
      table[i] = (byte) Math.round(encode(root * root));
    }
    return table;
  }

  LinearColour times(LinearColour o) {
    return new LinearColour(r * o.r, g * o.g, b * o.b);
  }

  LinearColour times(double k) {
    return new LinearColour(r * k, g * k, b * k);
  }

  /** Each channel to a power: what the same filter lets through in another thickness. */
  LinearColour power(double n) {
    return new LinearColour(Math.pow(r, n), Math.pow(g, n), Math.pow(b, n));
  }

  /** Relative luminance Y (IEC 61966-2-1, the primaries' share of it). */
  double luminance() {
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  }
}
