package slabwright.sheets.page;

import slabwright.drawing.Palette;
import slabwright.drawing.TextStyle;

/**
 * The sizes of words on a sheet.
 *
 * @param k 1 on Tabloid; smaller on small paper, larger on large, so that a wall print reads from a
 *     step away
 */
public record TypeSizes(double k) {
  static TypeSizes of(PaperSize paper) {
    double k = paper.width() / PaperSize.TABLOID.width();
    return new TypeSizes(Math.max(0.82, Math.min(1.35, k)));
  }

  TextStyle numeral() {
    return TextStyle.bold(11 * k);
  }

  TextStyle title() {
    return TextStyle.bold(5.2 * k);
  }

  public TextStyle heading() {
    return TextStyle.bold(4.2 * k);
  }

  public TextStyle body() {
    return TextStyle.plain(3.1 * k);
  }

  public TextStyle strong() {
    return TextStyle.bold(3.1 * k);
  }

  public TextStyle small() {
    return TextStyle.plain(2.6 * k).in(Palette.SOFT);
  }

  /** From baseline to baseline of running words. */
  public double leading() {
    return 4.7 * k;
  }
}
