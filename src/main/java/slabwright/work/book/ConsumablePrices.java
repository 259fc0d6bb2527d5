package slabwright.work.book;

import java.math.BigDecimal;

/**
 * What is used up or taken away on every job, by the measure it is bought or paid by.
 *
 * @param wallMasking film and tape along walls, a metre
 * @param maskingPaper paper round a stencil, a square metre
 * @param duct for a fan, a metre
 * @param dustDisposal of grinding dust and slurry, a kilogram
 * @param solventDisposal of what has held solvent: rags, cans, a litre of product used
 */
public record ConsumablePrices(
    Figure<BigDecimal> wallMasking,
    Figure<BigDecimal> maskingPaper,
    Figure<BigDecimal> duct,
    Figure<BigDecimal> dustDisposal,
    Figure<BigDecimal> solventDisposal) {

  static ConsumablePrices read(BookSection s) {
    return new ConsumablePrices(
        s.price("price_of_wall_masking_a_m"),
        s.price("price_of_masking_paper_a_m2"),
        s.price("price_of_duct_a_m"),
        s.price("price_of_dust_disposal_a_kg"),
        s.price("price_of_solvent_disposal_a_l"));
  }
}
