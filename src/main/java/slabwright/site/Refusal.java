package slabwright.site;

import java.util.Optional;
import slabwright.shape.Vec;

/**
 * Why something can't be: one sentence that says what, where and what to do.
 *
 * @param place the field it is about, as a path such as {@code areas[0].marks[2].form}; may be
 *     empty
 * @param where the point on the site, when there is one
 */
public record Refusal(String sentence, String place, Optional<Vec> where) {
  public static Refusal of(String sentence) {
    return new Refusal(sentence, "", Optional.empty());
  }

  public static Refusal at(String place, String sentence) {
    return new Refusal(sentence, place, Optional.empty());
  }

  public static Refusal at(String place, String sentence, Vec where) {
    return new Refusal(sentence, place, Optional.of(where));
  }
}
