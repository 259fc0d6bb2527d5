package slabwright.pdfin.page;

import java.util.List;
import slabwright.shape.Ring;
import slabwright.shape.check.CrossingCount;
import slabwright.units.Message;

/**
 * How much a page may ask for: operators, points, shapes, clips, copies and depth, each counted as
 * it comes.
 */
public final class PdfBudget {
  private static final int MOST_OPERATORS = 1_500_000;
  private static final int MOST_POINTS = 1_000_000;
  private static final int MOST_SHAPES = 100_000;
  private static final int MOST_COPIES = 50_000;
  private static final int MOST_CLIPS = 1000;
  private static final int MOST_CLIPPED = 500_000;

  /** Measured: so many fit in 512 MB. */
  private static final int MOST_CROSSINGS = 200_000;

  private static final int DEEPEST_STATE = 512;
  private static final int DEEPEST_COPY = 40;

  private int operators;
  private int points;
  private int shapes;
  private int copies;
  private int clipped;
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

  /** So many points at once, as of a curve. */
  public void points(int n) {
    points += n;
    if (points > MOST_POINTS) {
      throw over(Message.of("pdfin.painting.too-many-points", MOST_POINTS));
    }
  }

  /**
   * A shape.
   *
   * @param clips that it lies inside of
   */
  public void shape(int clips) {
    if (++shapes > MOST_SHAPES) {
      throw over(Message.of("pdfin.painting.too-many-shapes", MOST_SHAPES));
    }
    clipped += clips;
    if (clips > MOST_CLIPS || clipped > MOST_CLIPPED) {
      throw over(Message.of("pdfin.painting.too-many-clips", MOST_CLIPS));
    }
  }

  /** A clip, inside of so many others. */
  public void clip(int others) {
    if (others >= MOST_CLIPS) {
      throw over(Message.of("pdfin.painting.too-many-clips", MOST_CLIPS));
    }
  }

  /** Outlines that have to be sorted out, which takes room for each of their crossings. */
  public void crossings(List<Ring> rings) {
    if (CrossingCount.exceeds(rings, MOST_CROSSINGS)) {
      throw over(Message.of("pdfin.outlines.too-many-crossings", MOST_CROSSINGS));
    }
  }

  /** A letter's outline has some dozen points. */
  public void glyph() {
    points(12);
  }

  public void enter() {
    if (++copies > MOST_COPIES) {
      throw over(Message.of("pdfin.painting.too-many-copies", MOST_COPIES));
    }
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
