package slabwright.picture;

/**
 * Some rows of floor: light by channel without any lighting, and how much of each pixel is floor.
 * Rows are {@code width} long.
 */
final class FloorStrip {
  final int top;
  final int rows;
  final int width;
  final float[] r;
  final float[] g;
  final float[] b;
  final float[] floor;

  FloorStrip(int top, int rows, int width) {
    this.top = top;
    this.rows = rows;
    this.width = width;
    r = new float[rows * width];
    g = new float[rows * width];
    b = new float[rows * width];
    floor = new float[rows * width];
  }
}
