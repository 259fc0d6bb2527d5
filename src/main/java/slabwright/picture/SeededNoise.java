package slabwright.picture;

/** Chance that hangs on the place alone: a floor looks the same in every band and view. */
final class SeededNoise {
  private SeededNoise() {}

  /** 32 well mixed bits of a lattice place. */
  static int hash(int x, int y, int seed) {
    int h = x * 0x9E3779B1 ^ y * 0x85EBCA77 ^ seed * 0xC2B2AE3D;
    h ^= h >>> 15;
    h *= 0x2C1B3C6D;
    h ^= h >>> 12;
    h *= 0x297A2D39;
    return h ^ h >>> 15;
  }

  /** 0 to 1, from the low 16 bits. */
  static float low(int hash) {
    return (hash & 0xffff) / 65535f;
  }

  /** 0 to 1, from the high 16 bits. */
  static float high(int hash) {
    return (hash >>> 16) / 65535f;
  }

  /** The lattice cell of a place. */
  static int floor(double x) {
    int i = (int) x;
    return x < i ? i - 1 : i;
  }

  static float mix(float a, float b, float t) {
    return a + (b - a) * t;
  }
}
