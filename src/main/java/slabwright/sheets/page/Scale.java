package slabwright.sheets.page;

import slabwright.units.Message;

/**
 * A named scale.
 *
 * @param name as printed, such as {@code 1:50} or {@code 3/16″ = 1′ 0″}
 * @param denominator millimetres of floor to one millimetre of paper
 */
public record Scale(Message name, double denominator) {
  /** A metric scale of 1 to the number. */
  static Scale metric(int denominator) {
    return new Scale(Message.of("sheets.scale.metric", denominator), denominator);
  }

  /** So many inches of paper to the foot of floor: the scale factor is 12 over the inches. */
  static Scale toTheFoot(String paper, double inches) {
    return new Scale(Message.of("sheets.scale.to-the-foot", paper), 12 / inches);
  }

  static Scale fullSize() {
    return new Scale(Message.of("sheets.scale.full-size"), 1);
  }
}
