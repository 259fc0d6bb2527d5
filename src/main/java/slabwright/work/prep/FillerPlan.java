package slabwright.work.prep;

import java.util.List;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.Kits;

/**
 * Filler for all gaps.
 *
 * @param mm3 the gaps' volume
 * @param kits to buy, the loss included
 */
public record FillerPlan(List<FillerGap> gaps, double mm3, Figure<Kits> kits) {
  public FillerPlan {
    gaps = List.copyOf(gaps);
  }

  static FillerPlan of(List<FillerGap> gaps, ShopBook book) {
    double mm3 = gaps.stream().mapToDouble(FillerGap::mm3).sum();
    return new FillerPlan(gaps, mm3, mm3 == 0 ? none() : kits(mm3, book));
  }

  private static Figure<Kits> none() {
    return Figure.known(new Kits(List.of(), 0));
  }

  private static Figure<Kits> kits(double mm3, ShopBook book) {
    return book.first(ProductKind.FILLER)
        .map(p -> kits(mm3, p))
        .orElseGet(() -> Figure.missing(Message.of("work.filler-plan.a-filler")));
  }

  private static Figure<Kits> kits(double mm3, Product p) {
    return p.spread()
        .loss()
        .with(p.spread().kits(), (loss, kits) -> Kits.of(mm3 / (1 - loss), kits));
  }
}
