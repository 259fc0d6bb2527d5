package slabwright.inlay.artwork.picture;

import java.util.ArrayList;
import java.util.List;
import slabwright.units.CieLab;

/** Which colours a picture holds and how often, in cells of four values of each channel. */
final class ColourHistogram {
  private static final int CELLS = 1 << 18;

  private final int[] count = new int[CELLS];
  private final long[] red = new long[CELLS];
  private final long[] green = new long[CELLS];
  private final long[] blue = new long[CELLS];

  /** A cell in use: the mean of its pixels and how many they are. */
  record Cell(int rgb, CieLab lab, long count) {
    static Cell of(double r, double g, double b, long count) {
      int rgb = PixelColour.packed(r / count, g / count, b / count);
      return new Cell(rgb, PixelColour.lab(rgb), count);
    }
  }

  static int cell(int rgb) {
    return (((rgb >> 18) & 63) << 12) | (((rgb >> 10) & 63) << 6) | ((rgb >> 2) & 63);
  }

  void add(int rgb) {
    int cell = cell(rgb);
    count[cell]++;
    red[cell] += PixelColour.red(rgb);
    green[cell] += PixelColour.green(rgb);
    blue[cell] += PixelColour.blue(rgb);
  }

  /** The cells in use, the fullest first. */
  List<Cell> cells() {
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < CELLS; i++) {
      if (count[i] > 0) {
        cells.add(Cell.of((double) red[i], (double) green[i], (double) blue[i], count[i]));
      }
    }
    cells.sort((p, q) -> Long.compare(q.count(), p.count()));
    return cells;
  }
}
