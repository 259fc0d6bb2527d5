package slabwright.inlay.artwork;

/**
 * A colour.
 *
 * @param r 0 to 255
 * @param g 0 to 255
 * @param b 0 to 255
 * @param alpha 0 see-through to 1 solid
 */
public record Rgba(int r, int g, int b, double alpha) {
  public String hex() {
    return "#%02x%02x%02x".formatted(r, g, b);
  }

  public static Rgba ofHex(String hex) {
    int v = Integer.parseInt(hex.substring(1), 16);
    return new Rgba(v >> 16, v >> 8 & 255, v & 255, 1);
  }
}
