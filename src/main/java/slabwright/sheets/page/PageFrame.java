package slabwright.sheets.page;

import slabwright.shape.Bounds;

/** Where things lie on a page of the paper, in mm. */
public record PageFrame(PaperSize paper, TypeSizes type) {
  private static final double MARGIN = 10;
  private static final double PAD = 6;

  public static PageFrame of(PaperSize paper) {
    return new PageFrame(paper, TypeSizes.of(paper));
  }

  /** The line around everything. */
  public Bounds frame() {
    return paper.bounds().grown(-MARGIN);
  }

  /** The band at the foot: names, scale, date. */
  public Bounds titleBlock() {
    Bounds f = frame();
    return new Bounds(f.minX(), f.maxY() - 33 * type.k(), f.maxX(), f.maxY());
  }

  /** The sheet's number, title and line of explanation. */
  Bounds header() {
    Bounds f = frame();
    return new Bounds(f.minX() + PAD, f.minY() + 4, f.maxX() - PAD, f.minY() + 4 + 13 * type.k());
  }

  /** All between header and title block. */
  public Bounds body() {
    Bounds f = frame();
    return new Bounds(
        f.minX() + PAD, header().maxY() + 3 * type.k(), f.maxX() - PAD, titleBlock().minY() - 4);
  }

  /** The column of tables beside a drawing. */
  public Bounds side() {
    Bounds b = body();
    return new Bounds(b.maxX() - 0.255 * paper.width(), header().minY() + 2, b.maxX(), b.maxY());
  }

  /** The field of the drawing, left of the column. */
  public Bounds field() {
    Bounds b = body();
    return new Bounds(b.minX(), b.minY(), side().minX() - PAD, b.maxY());
  }

  /** The body as so many columns side by side. */
  Bounds column(int i, int of) {
    Bounds b = body();
    double gap = 2 * PAD;
    double w = (b.width() - gap * (of - 1)) / of;
    double x = b.minX() + i * (w + gap);
    return new Bounds(x, b.minY(), x + w, b.maxY());
  }
}
