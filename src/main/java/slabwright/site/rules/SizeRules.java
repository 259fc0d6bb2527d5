package slabwright.site.rules;

import java.util.List;
import slabwright.site.Refusal;
import slabwright.units.Length;

/** Sizes that make sense on a site. */
final class SizeRules {
  /** Nothing that this program plans is longer; a larger number is a slip of the unit. */
  static final double LONGEST_MM = 2_000_000;

  private SizeRules() {}

  static void positive(Length v, String what, String path, List<Refusal> out) {
    if (!(v.mm() > 0) || v.mm() > LONGEST_MM) {
      out.add(Refusal.at(path, what + " is " + v + "; it must be more than 0 and at most 2 km."));
    }
  }

  static void notNegative(Length v, String what, String path, List<Refusal> out) {
    if (!(v.mm() >= 0) || v.mm() > LONGEST_MM) {
      out.add(Refusal.at(path, what + " is " + v + "; it must be 0 or more and at most 2 km."));
    }
  }

  static void between(
      double v, double low, double high, String what, String path, List<Refusal> out) {
    if (!(v >= low && v <= high)) {
      out.add(
          Refusal.at(
              path, what + " is " + v + "; it must lie between " + low + " and " + high + "."));
    }
  }
}
