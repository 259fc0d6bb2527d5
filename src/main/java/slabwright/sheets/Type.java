package slabwright.sheets;

import slabwright.drawing.Palette;
import slabwright.drawing.TextStyle;

/**
 * The sizes of words on a sheet.
 *
 * @param k 1 on Tabloid; smaller on small paper, larger on large, so that a wall print reads from a
 *     step away
 */
record Type(double k) {
  static Type of(Paper paper) {
    double k = paper.width() / Paper.TABLOID.width();
    return new Type(Math.max(0.82, Math.min(1.35, k)));
  }

  TextStyle numeral() {
    return TextStyle.bold(11 * k);
  }

  TextStyle title() {
    return TextStyle.bold(5.2 * k);
  }

  TextStyle heading() {
    return TextStyle.bold(4.2 * k);
  }

  TextStyle body() {
    return TextStyle.plain(3.1 * k);
  }

  TextStyle strong() {
    return TextStyle.bold(3.1 * k);
  }

  TextStyle small() {
    return TextStyle.plain(2.6 * k).in(Palette.SOFT);
  }

  /** From baseline to baseline of running words. */
  double leading() {
    return 4.7 * k;
  }
}
