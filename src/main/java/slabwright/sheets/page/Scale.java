package slabwright.sheets.page;

/**
 * A named scale.
 *
 * @param words as printed, such as {@code 1:50} or {@code 3/16″ = 1′ 0″}
 * @param denominator millimetres of floor to one millimetre of paper
 */
public record Scale(String words, double denominator) {
  /** A metric scale of 1 to the number. */
  static Scale metric(int denominator) {
    return new Scale("1:" + denominator, denominator);
  }

  /** So many inches of paper to the foot of floor: the scale factor is 12 over the inches. */
  static Scale toTheFoot(String words, double inches) {
    return new Scale(words + "″ = 1′ 0″", 12 / inches);
  }
}
