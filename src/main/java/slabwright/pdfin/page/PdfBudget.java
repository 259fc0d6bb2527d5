package slabwright.pdfin.page;

import slabwright.units.Message;

/** How much a page may ask for: operators, points, shapes and depth, each counted as it comes. */
public final class PdfBudget {
  private static final int MOST_OPERATORS = 1_500_000;
  private static final int MOST_POINTS = 1_000_000;
  private static final int MOST_SHAPES = 100_000;
  private static final int DEEPEST_STATE = 512;
  private static final int DEEPEST_COPY = 40;

  private int operators;
  private int points;
  private int shapes;
  private int depth;

  public void operator(int saved) {
    if (++operators > MOST_OPERATORS) {
      throw over(Message.of("pdfin.painting.too-many-operators", MOST_OPERATORS));
    }
    if (saved > DEEPEST_STATE) {
      throw over(Message.of("pdfin.painting.state-too-deep", DEEPEST_STATE));
    }
  }

  public void point() {
    points(1);
  }

  private void points(int n) {
    points += n;
    if (points > MOST_POINTS) {
      throw over(Message.of("pdfin.painting.too-many-points", MOST_POINTS));
    }
  }

  public void shape() {
    if (++shapes > MOST_SHAPES) {
      throw over(Message.of("pdfin.painting.too-many-shapes", MOST_SHAPES));
    }
  }

  /** A letter's outline has some dozen points. */
  public void glyph() {
    points(12);
  }

  public void enter() {
    if (++depth > DEEPEST_COPY) {
      throw over(Message.of("pdfin.painting.copies-too-deep", DEEPEST_COPY));
    }
  }

  public void leave() {
    depth--;
  }

  private static PdfBudgetException over(Message why) {
    return new PdfBudgetException(why);
  }
}
