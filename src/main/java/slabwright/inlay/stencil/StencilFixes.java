package slabwright.inlay.stencil;

import java.util.List;
import java.util.function.UnaryOperator;
import slabwright.shape.Bounds;
import slabwright.shape.Region;

/**
 * The fixes that a person accepted, applied to each stencil in this order: scraps, loose pieces,
 * needle points, thin vinyl. 0 leaves a fix out.
 *
 * @param dropUnder openings smaller than this are left out, mm²
 * @param fillUnder loose pieces smaller than this are left out, mm²
 * @param round radius of needle points of openings, mm
 * @param widen vinyl thinner than this is widened to it, mm
 */
public record StencilFixes(double dropUnder, double fillUnder, double round, double widen) {
  /** None. */
  public static final StencilFixes NONE = new StencilFixes(0, 0, 0, 0);

  /** The openings after the fixes; what each did is added to {@code changes}. */
  Region apply(int layer, Region openings, Bounds blank, List<Change> changes) {
    Steps steps = new Steps(layer, changes);
    Region mended = openings;
    mended =
        steps.step(Fix.DROP_SCRAPS, dropUnder, mended, r -> StencilFix.dropScraps(r, dropUnder));
    mended =
        steps.step(
            Fix.DROP_LOOSE, fillUnder, mended, r -> StencilFix.fillLoose(r, blank, fillUnder));
    mended =
        steps.step(
            Fix.ROUND_NEEDLES,
            round,
            mended,
            r -> StencilFix.roundNeedles(r, StencilLimits.NEEDLE, round));
    return steps.step(Fix.WIDEN_VINYL, widen, mended, r -> StencilFix.widenVinyl(r, blank, widen));
  }

  private record Steps(int layer, List<Change> changes) {
    Region step(Fix fix, double limit, Region before, UnaryOperator<Region> how) {
      if (limit <= 0) {
        return before;
      }
      Region after = how.apply(before);
      Region changed = fix == Fix.DROP_LOOSE ? after.minus(before) : before.minus(after);
      int places = changed.parts().size();
      if (places > 0) {
        changes.add(new Change(fix, layer, limit, places, changed.area()));
      }
      return after;
    }
  }
}
