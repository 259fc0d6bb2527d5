package slabwright.drawing.label;

import java.util.List;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.shape.Vec;

/**
 * A box of words or a sign that wants a place on paper.
 *
 * @param about the point it speaks of
 * @param width of the box in mm of paper
 * @param height of the box in mm of paper
 * @param wishes middles to try first, in order; without any the point itself
 * @param reach how far from the point its middle may move, mm of paper
 * @param near a box this close to the point needs no leader, mm of paper
 */
public record Label(
    Vec about, double width, double height, List<Vec> wishes, double reach, double near) {
  private static final double NEAR = 1.5;

  public Label {
    wishes = wishes.isEmpty() ? List.of(about) : List.copyOf(wishes);
  }

  /** A box that would best lie on the point itself. */
  public static Label box(Vec about, double width, double height, double reach) {
    return new Label(about, width, height, List.of(), reach, NEAR);
  }

  /** The box of one line of words. */
  public static Label of(Vec about, String words, TextStyle style, double reach) {
    double height = (TextMeasure.CAP_HEIGHT + TextMeasure.DESCENT) * style.size();
    return box(about, TextMeasure.width(words, style), height, reach);
  }

  /** The same label trying these middles first. */
  public Label wishing(List<Vec> middles) {
    return new Label(about, width, height, middles, reach, near);
  }

  /** The same label beside a sign: no leader while it lies this near. */
  public Label nearBy(double mm) {
    return new Label(about, width, height, wishes, reach, mm);
  }

  /**
   * Where a label came to lie.
   *
   * @param middle of its box
   * @param leader from its point to its box, when the box lies clear of the point; else empty
   */
  public record Placed(Vec middle, List<Vec> leader) {
    public Placed {
      leader = List.copyOf(leader);
    }
  }
}
