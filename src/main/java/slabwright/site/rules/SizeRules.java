package slabwright.site.rules;

import java.util.List;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Refusal;

/** Sizes that make sense on a site. */
final class SizeRules {
  /** Nothing that this program plans is longer; a larger number is a slip of the unit. */
  static final double LONGEST_MM = 2_000_000;

  private SizeRules() {}

  static void positive(Length v, Message what, String path, List<Refusal> out) {
    if (!(v.mm() > 0) || v.mm() > LONGEST_MM) {
      out.add(
          Refusal.at(path, Message.of("site.size-rules.is-it-must-be-more", what, v.toString())));
    }
  }

  static void notNegative(Length v, Message what, String path, List<Refusal> out) {
    if (!(v.mm() >= 0) || v.mm() > LONGEST_MM) {
      out.add(Refusal.at(path, Message.of("site.size-rules.is-it-must-be-or", what, v.toString())));
    }
  }

  static void between(
      double v, double low, double high, Message what, String path, List<Refusal> out) {
    if (!(v >= low && v <= high)) {
      out.add(
          Refusal.at(
              path, Message.of("site.size-rules.is-it-must-lie-between", what, v, low, high)));
    }
  }
}
