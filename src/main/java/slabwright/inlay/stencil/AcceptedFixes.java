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
public record AcceptedFixes(double dropUnder, double fillUnder, double round, double widen) {
  /** None. */
  public static final AcceptedFixes NONE = new AcceptedFixes(0, 0, 0, 0);

  /** The openings after the fixes; what each did is added to {@code changes}. */
  Region apply(int layer, Region openings, Bounds blank, List<FixEffect> changes) {
    Steps steps = new Steps(layer, changes);
    Region mended = openings;
    mended =
        steps.step(
            FixKind.DROP_SCRAPS, dropUnder, mended, r -> StencilFixOp.dropScraps(r, dropUnder));
    mended =
        steps.step(
            FixKind.DROP_LOOSE,
            fillUnder,
            mended,
            r -> StencilFixOp.fillLoose(r, blank, fillUnder));
    mended =
        steps.step(
            FixKind.ROUND_NEEDLES,
            round,
            mended,
            r -> StencilFixOp.roundNeedles(r, StencilLimits.NEEDLE, round));
    return steps.step(
        FixKind.WIDEN_VINYL, widen, mended, r -> StencilFixOp.widenVinyl(r, blank, widen));
  }

  private record Steps(int layer, List<FixEffect> changes) {
    Region step(FixKind fix, double limit, Region before, UnaryOperator<Region> how) {
      if (limit <= 0) {
        return before;
      }
      Region after = how.apply(before);
      Region changed = fix == FixKind.DROP_LOOSE ? after.minus(before) : before.minus(after);
      int places = changed.parts().size();
      if (places > 0) {
        changes.add(new FixEffect(fix, layer, limit, places, changed.area()));
      }
      return after;
    }
  }
}
