package slabwright.work.prep;

import java.util.List;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.book.RateArithmetic;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.Kits;
import slabwright.work.step.StepPlace;

/**
 * Filler for all gaps.
 *
 * @param mm3 the gaps' volume
 * @param kits to buy, the loss included, and what sets in the pail where kits are not split
 * @param mixing in batches that are used up before they set; empty where there is nothing to fill
 */
public record FillerPlan(
    List<FillerGap> gaps, double mm3, Figure<Kits> kits, Optional<MixPlan> mixing) {
  public FillerPlan {
    gaps = List.copyOf(gaps);
  }

  /**
   * The filler of all gaps.
   *
   * @param warmer of slab and air, °C
   */
  static FillerPlan of(List<FillerGap> gaps, ShopBook book, Figure<Double> warmer) {
    double mm3 = gaps.stream().mapToDouble(FillerGap::mm3).sum();
    if (mm3 == 0) {
      return new FillerPlan(gaps, 0, Figure.known(new Kits(List.of(), 0)), Optional.empty());
    }
    Optional<Product> filler = book.first(ProductKind.FILLER);
    Message called = Message.of("work.filler-plan.a-filler");
    MixPlan mixing =
        MixPlan.of(
            StepPlace.WHOLE_FLOOR,
            Figure.all(gaps.stream().map(g -> piece(g, book)).toList()),
            filler,
            called,
            false,
            warmer,
            PrepPlan.hands(book));
    return new FillerPlan(
        gaps,
        mm3,
        filler
            .map(p -> MixPlan.kits(mm3, p, List.of(mixing)))
            .orElseGet(() -> Figure.missing(called)),
        Optional.of(mixing));
  }

  private static Figure<MixPieces.Piece> piece(FillerGap gap, ShopBook book) {
    return RateArithmetic.time(gap.run(), book.prep().filling())
        .map(t -> new MixPieces.Piece(gap.mm3(), t));
  }
}
