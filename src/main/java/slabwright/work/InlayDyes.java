package slabwright.work;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import slabwright.inlay.masking.DyeNeed;
import slabwright.inlay.masking.DyeRates;
import slabwright.site.Finish;
import slabwright.units.QuantityFormat;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;
import slabwright.work.coat.CoatPlan;

/** What each stencil of an inlay takes by the shop book. */
final class InlayDyes {
  private InlayDyes() {}

  /** Empty when there is no such inlay or colour, or the finish has no dye for it. */
  static Optional<DyeNeed> need(AreaWorkPlan area, String inlayId, String colour) {
    return area.floor().inlays().stream()
        .filter(i -> i.id().equals(inlayId))
        .flatMap(i -> i.dyes().stream())
        .filter(d -> d.colour().equals(colour))
        .findFirst()
        .flatMap(d -> need(area, d));
  }

  private static Optional<DyeNeed> need(AreaWorkPlan area, InlayTakeoff.StencilDye dye) {
    return area.coats().stream()
        .filter(c -> c.job().target() == Finish.Target.INLAY)
        .filter(c -> c.product().id().equals(dye.product()))
        .findFirst()
        .map(c -> DyeNeed.of(dye.openings(), book(c)));
  }

  private static DyeRates book(CoatPlan coat) {
    Product p = coat.product();
    return new DyeRates(
        OptionalInt.of(coat.job().coats()),
        optional(p.spread().coverage()),
        optional(p.spread().loss()),
        optional(p.laying().jar().map(v -> v / QuantityFormat.LITRE_MM3)));
  }

  private static OptionalDouble optional(Figure<Double> figure) {
    return figure.maybe().map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
