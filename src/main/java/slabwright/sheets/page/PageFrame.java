package slabwright.sheets.page;

import slabwright.shape.Bounds;

/** Where things lie on a page of the paper, in mm. */
public record PageFrame(PaperSize paper, TypeSizes type, Form form) {
  /** What a page is laid out as. */
  public enum Form {
    /** A single sheet, lying, whose words grow with the paper. */
    SHEET,
    /** A page of a packet, standing. */
    PORTRAIT,
    /** A page of a packet, lying. */
    LANDSCAPE
  }

  private static final double MARGIN = 10;
  private static final double PAD = 6;

  /** Height of the title strip, mm; no more than 12. */
  static final double STRIP = 11;

  /** Height of the band with the check line over the title strip, mm. */
  static final double CHECK_BAND = 11;

  /** A single sheet. */
  public static PageFrame of(PaperSize paper) {
    return new PageFrame(paper, TypeSizes.of(paper), Form.SHEET);
  }

  /** A standing page of a packet: words and a drawing over the whole width. */
  public static PageFrame portrait(PaperSize paper) {
    return new PageFrame(paper, TypeSizes.ofPacket(), Form.PORTRAIT);
  }

  /** A lying page of a packet. */
  public static PageFrame landscape(PaperSize paper) {
    return new PageFrame(paper, TypeSizes.ofPacket(), Form.LANDSCAPE);
  }

  public boolean ofPacket() {
    return form != Form.SHEET;
  }

  /** Width of the page as it is read, mm. */
  public double width() {
    return form == Form.PORTRAIT ? paper.height() : paper.width();
  }

  /** Height of the page as it is read, mm. */
  public double height() {
    return form == Form.PORTRAIT ? paper.width() : paper.height();
  }

  /** What is printed on. */
  public Bounds frame() {
    return new Bounds(0, 0, width(), height()).grown(-MARGIN);
  }

  /** The band at the foot: who, which site, which page. */
  public Bounds titleStrip() {
    Bounds f = frame();
    return new Bounds(f.minX(), f.maxY() - STRIP, f.maxX(), f.maxY());
  }

  /** Title and line of explanation. */
  Bounds header() {
    Bounds f = frame();
    return new Bounds(f.minX(), f.minY(), f.maxX(), f.minY() + (ofPacket() ? 15 : 12 * type.k()));
  }

  /** All between header and title strip. */
  public Bounds body() {
    Bounds f = frame();
    return new Bounds(f.minX(), header().maxY() + 3 * type.k(), f.maxX(), titleStrip().minY() - 4);
  }

  /** The body of a page that is one drawing at a scale. */
  public Bounds drawn() {
    Bounds b = body();
    return new Bounds(b.minX(), b.minY(), b.maxX(), b.maxY() - CHECK_BAND);
  }

  /** The column of tables beside a drawing; under it on a standing page. */
  public Bounds side() {
    Bounds b = body();
    return switch (form) {
      case SHEET ->
          new Bounds(b.maxX() - 0.255 * paper.width(), header().minY() + 2, b.maxX(), b.maxY());
      case LANDSCAPE ->
          new Bounds(b.maxX() - 0.33 * b.width(), header().minY() + 2, b.maxX(), b.maxY());
      case PORTRAIT -> new Bounds(b.minX(), split() + PAD, b.maxX(), drawn().maxY());
    };
  }

  /** The field of the drawing, left of the column; over it on a standing page. */
  public Bounds field() {
    Bounds d = drawn();
    return form == Form.PORTRAIT
        ? new Bounds(d.minX(), d.minY(), d.maxX(), split())
        : new Bounds(d.minX(), d.minY(), side().minX() - PAD, d.maxY());
  }

  /** Where the drawing of a standing page ends. */
  private double split() {
    return drawn().minY() + 0.62 * drawn().height();
  }

  /** The body as so many columns side by side. */
  public Bounds column(int i, int of) {
    Bounds b = body();
    double gap = 2 * PAD;
    double w = (b.width() - gap * (of - 1)) / of;
    double x = b.minX() + i * (w + gap);
    return new Bounds(x, b.minY(), x + w, b.maxY());
  }
}
