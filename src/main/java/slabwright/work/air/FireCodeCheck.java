package slabwright.work.air;

import java.util.ArrayList;
import java.util.List;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;

/**
 * Whether the fire code's chapter on flammable finishes applies: floor finishing with Class I or II
 * liquids on more than 350 ft², or more than 1 gal of them by brush or roller (International Fire
 * Code 2401.1).
 *
 * @param applies whether a threshold is passed
 * @param reasons which, with the numbers
 */
public record FireCodeCheck(boolean applies, List<Message> reasons) {
  /** Square feet that must not be exceeded. */
  public static final double FLOOR_MM2 = 350 * QuantityFormat.SQUARE_FOOT_MM2;

  /** The volume that must not be exceeded: 1 US gal. */
  public static final double LIQUID_MM3 = QuantityFormat.US_GALLON_MM3;

  public FireCodeCheck {
    reasons = List.copyOf(reasons);
  }

  /** Judges the floor that gets Class I or II liquids (mm²) and their volume (mm³). */
  public static FireCodeCheck of(double floorMm2, double liquidMm3) {
    List<Message> reasons = new ArrayList<>();
    if (liquidMm3 > 0 && floorMm2 > FLOOR_MM2) {
      reasons.add(
          Message.of(
              "work.fire-code-check.floor",
              floorMm2 / QuantityFormat.SQUARE_FOOT_MM2,
              floorMm2 / 1e6));
    }
    if (liquidMm3 > LIQUID_MM3) {
      reasons.add(
          Message.of(
              "work.fire-code-check.liquid",
              liquidMm3 / QuantityFormat.US_GALLON_MM3,
              liquidMm3 / QuantityFormat.LITRE_MM3));
    }
    return new FireCodeCheck(!reasons.isEmpty(), reasons);
  }

  /** What a product of these solvents contributes: its Class I and II solvents' volume in mm³. */
  public static double flammable(List<SolventShare> solvents, double mm3) {
    boolean flammable =
        solvents.stream().anyMatch(s -> s.solvent().isClassOne() || s.solvent().isClassTwo());
    return flammable ? mm3 : 0;
  }
}
