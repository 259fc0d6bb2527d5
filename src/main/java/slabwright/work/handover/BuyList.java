package slabwright.work.handover;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.site.Finish;
import slabwright.units.ColourNaming;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.InlayTakeoff;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.Kits;

/**
 * What is bought for the job: one product for all floor areas together, since half a kit left over
 * on one floor serves the next. A product that is mixed whole keeps the kits that each coat opens.
 * Each colour of a graphic is a dye of its own.
 */
public final class BuyList {
  private record Key(String product, Optional<Message> colour) {}

  private final Map<Key, BuyLine> lines = new LinkedHashMap<>();

  private BuyList() {}

  public static List<BuyLine> of(WorkPlan plan) {
    BuyList list = new BuyList();
    for (AreaWorkPlan a : plan.areas()) {
      a.coats().forEach(c -> list.add(a, c));
      if (a.prep().filler().mm3() > 0) {
        plan.book()
            .first(ProductKind.FILLER)
            .ifPresent(p -> list.add(p, Optional.empty(), a.prep().filler().kits()));
      }
      if (a.prep().levelling().fills()) {
        plan.book()
            .first(ProductKind.LEVELLER)
            .ifPresent(p -> list.add(p, Optional.empty(), a.prep().levelling().kits()));
      }
    }
    return List.copyOf(list.lines.values());
  }

  private void add(AreaWorkPlan area, CoatPlan coat) {
    if (coat.job().target() != Finish.Target.INLAY) {
      add(coat.product(), colour(coat.product()), coat.kits());
      return;
    }
    for (InlayTakeoff inlay : area.floor().inlays()) {
      for (InlayTakeoff.StencilDye dye : inlay.dyes()) {
        if (dye.product().equals(coat.product().id()) && coat.job().mm2() > 0) {
          add(
              coat.product(),
              Optional.of(dye.name()),
              part(coat, dye.openings() / coat.job().mm2()));
        }
      }
    }
  }

  /** A dye for the floor is ordered in a colour: as the book shows it, else it is asked for. */
  private static Optional<Message> colour(Product product) {
    return product.is(ProductKind.BASE_DYE)
        ? Optional.of(
            product
                .colour()
                .maybe()
                .map(ColourNaming::of)
                .orElse(Message.of("work.buy-line.colour-to-choose")))
        : Optional.empty();
  }

  /** One colour's share of a coat by what its openings take of the whole. */
  private static Figure<Kits> part(CoatPlan coat, double share) {
    return coat.totalVolume()
        .with(coat.product().spread().kits(), (v, sold) -> Kits.of(v * share, sold));
  }

  private void add(Product product, Optional<Message> colour, Figure<Kits> more) {
    Key key = new Key(product.id(), colour);
    Figure<Kits> before =
        lines.containsKey(key) ? lines.get(key).kits() : Figure.known(new Kits(List.of(), 0));
    lines.put(key, new BuyLine(product.id(), product.label(), colour, sum(product, before, more)));
  }

  private static Figure<Kits> sum(Product product, Figure<Kits> before, Figure<Kits> more) {
    boolean opened =
        product.mixing().twoPart().maybe().orElse(false)
            && !product.spread().splits().maybe().orElse(false)
            && !product.mixing().nozzle().maybe().orElse(false);
    return opened
        ? before.with(more, Kits::and)
        : before
            .with(more, (a, b) -> a.needed() + b.needed())
            .with(product.spread().kits(), Kits::of);
  }
}
