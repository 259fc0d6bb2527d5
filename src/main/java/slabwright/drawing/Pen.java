package slabwright.drawing;

import java.util.List;

/**
 * How a line is drawn.
 *
 * @param width millimetres of paper
 * @param dash lengths drawn and left out in turn, millimetres of paper; empty for a whole line
 * @param round whether ends and corners are round; else ends are cut square at the end point
 */
public record Pen(double width, Colour colour, List<Double> dash, boolean round) {
  public Pen {
    dash = List.copyOf(dash);
  }

  public static Pen of(double width, Colour colour) {
    return new Pen(width, colour, List.of(), false);
  }

  public Pen dashed(double on, double off) {
    return new Pen(width, colour, List.of(on, off), round);
  }

  public Pen rounded() {
    return new Pen(width, colour, dash, true);
  }
}
