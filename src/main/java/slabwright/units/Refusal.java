package slabwright.units;

import java.util.Optional;

/**
 * Why something can't be: what, where and what to do.
 *
 * @param message becomes one sentence where it is read
 * @param place the field it is about, as a path such as {@code areas[0].marks[2].form}; may be
 *     empty
 * @param where the point on the site, when there is one
 */
public record Refusal(Message message, String place, Optional<Point> where) {
  /** A point on the site, in mm. */
  public record Point(double x, double y) {}

  public static Refusal of(Message message) {
    return new Refusal(message, "", Optional.empty());
  }

  public static Refusal at(String place, Message message) {
    return new Refusal(message, place, Optional.empty());
  }

  public static Refusal at(String place, Message message, double x, double y) {
    return new Refusal(message, place, Optional.of(new Point(x, y)));
  }
}
