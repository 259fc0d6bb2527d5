package slabwright.inlay;

import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.inlay.stencil.FixKind;
import slabwright.inlay.stencil.StencilLimits;
import slabwright.site.StencilChanges;
import slabwright.site.StencilSpec;
import slabwright.units.Length;

/** Accepting a fix: the settings that make the next plan mend what a check found. */
public final class FixAcceptance {
  /** Needle points are rounded to a third of the narrowest mask: our own choice, no source. */
  private static final double ROUND = 3;

  private FixAcceptance() {}

  /** The settings with a fix accepted, as far as the film asks for it. */
  public static StencilSpec accept(FixKind fix, StencilSpec spec) {
    StencilChanges c = spec.changes();
    double holds = spec.vinylHolds().mm();
    StencilLimits limits = StencilLimits.forFilm(holds);
    return spec.withChanges(
        switch (fix) {
          case WIDEN_VINYL -> c.withThickenMask(Optional.of(spec.vinylHolds()));
          case DROP_SCRAPS -> c.withDropUnder(OptionalDouble.of(limits.scrap()));
          case DROP_LOOSE -> c.withFillUnder(OptionalDouble.of(limits.loosePiece()));
          case ROUND_NEEDLES ->
              c.withRoundNeedles(Optional.of(Length.mm(Math.rint(holds / ROUND * 1000) / 1000)));
        });
  }

  /** Whether a fix was accepted. */
  public static boolean isAccepted(FixKind fix, StencilSpec spec) {
    return !withdraw(fix, spec).equals(spec);
  }

  /** The settings with a fix taken back. */
  public static StencilSpec withdraw(FixKind fix, StencilSpec spec) {
    StencilChanges c = spec.changes();
    return spec.withChanges(
        switch (fix) {
          case WIDEN_VINYL -> c.withThickenMask(Optional.empty());
          case DROP_SCRAPS -> c.withDropUnder(OptionalDouble.empty());
          case DROP_LOOSE -> c.withFillUnder(OptionalDouble.empty());
          case ROUND_NEEDLES -> c.withRoundNeedles(Optional.empty());
        });
  }
}
