package slabwright.work.handover;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import slabwright.units.Message;
import slabwright.units.RateFormat;
import slabwright.units.UnitSystem;
import slabwright.work.book.Figure;
import slabwright.work.book.ProductKind;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.DividedCoat;

/**
 * How much grit additive is bought for coats: never less than the crew weighs out, which is told a
 * coat (or a section of it) and a batch, each rounded by itself.
 */
final class GritToBuy {
  /** Of a hundredth of a kilogram: less than this is none. */
  private static final double SLACK = 1e-6;

  /** By so much a hundredth of a pound is told less than it is. */
  private static final double HALF_A_STEP_KG = 0.005 * RateFormat.POUND_KG;

  private GritToBuy() {}

  /** As the crew is told to stir it in: by the book's label. */
  static Message name(ShopBook book) {
    return book.first(ProductKind.GRIT_ADDITIVE)
        .map(p -> Message.of("work.consumable.named-grit", p.label()))
        .orElseGet(() -> Message.of("work.consumable.grit-additive"));
  }

  /**
   * In whole hundredths of a kilogram, so that the price is the same in every system of units;
   * enough for what the crew reads in either, also where it is told in pounds. Zero where no coat
   * takes any.
   */
  static Figure<CostLine.Count> of(Stream<CoatPlan> coats) {
    return Figure.all(coats.map(GritToBuy::weighedOut).toList())
        .map(l -> l.stream().mapToDouble(kg -> kg).sum())
        .map(GritToBuy::bought);
  }

  private static CostLine.Count bought(double kg) {
    double told = kg > 0 ? kg + HALF_A_STEP_KG : 0;
    return new CostLine.Count(
        BigDecimal.valueOf(Math.ceil(told * 100 - SLACK) / 100).setScale(2, RoundingMode.HALF_UP),
        CostLine.Unit.KILOGRAMS);
  }

  private static Figure<Double> weighedOut(CoatPlan coat) {
    return weighedOut(coat, UnitSystem.METRIC)
        .with(weighedOut(coat, UnitSystem.FEET_INCHES), Math::max);
  }

  /** The larger of what the totals say and what the batches say, kg. */
  private static Figure<Double> weighedOut(CoatPlan coat, UnitSystem units) {
    Figure<Double> totals =
        Figure.all(sections(coat).stream().map(CoatPlan::grit).toList())
            .map(l -> l.stream().mapToDouble(kg -> RateFormat.weighedUp(kg, units)).sum());
    return totals.with(
        coat.product().spread().gritPerVolume(),
        (all, perVolume) -> Math.max(all, batches(coat, perVolume, units)));
  }

  private static List<CoatPlan> sections(CoatPlan coat) {
    return coat.divided()
        .map(d -> d.sections().stream().map(DividedCoat.Section::plan).toList())
        .orElse(List.of(coat));
  }

  private static double batches(CoatPlan coat, double perVolume, UnitSystem units) {
    return coat.mixed().stream()
        .flatMap(b -> b.list().stream())
        .mapToDouble(b -> RateFormat.weighedUp(perVolume * b.mixed(), units))
        .sum();
  }
}
