package slabwright.work.book;

import java.math.BigDecimal;

/**
 * What is used up or taken away on every job, by the measure it is bought or paid by.
 *
 * @param wallMasking film and tape along walls, doorways and what stands there, a metre
 * @param maskingPaper paper round a stencil, a square metre
 * @param cupWheel wear of the tools that take off residue and trenches, a square metre
 * @param screens to abrade between coats, a square metre
 * @param rollerSleeve one
 * @param brush one
 * @param pail one, for a mixed batch
 * @param protection of one person for a day: cartridges, gloves, suit
 * @param gasMeter for a day
 * @param dustDisposal of grinding dust and slurry, a kilogram
 * @param solventDisposal of what has held solvent: rags, cans, a litre of product used
 */
public record ConsumablePrices(
    Figure<BigDecimal> wallMasking,
    Figure<BigDecimal> maskingPaper,
    Figure<BigDecimal> cupWheel,
    Figure<BigDecimal> screens,
    Figure<BigDecimal> rollerSleeve,
    Figure<BigDecimal> brush,
    Figure<BigDecimal> pail,
    Figure<BigDecimal> protection,
    Figure<BigDecimal> gasMeter,
    Figure<BigDecimal> dustDisposal,
    Figure<BigDecimal> solventDisposal) {

  static ConsumablePrices read(BookSection s) {
    return new ConsumablePrices(
        s.price("price_of_wall_masking_a_m"),
        s.price("price_of_masking_paper_a_m2"),
        s.price("price_of_cup_wheel_wear_a_m2"),
        s.price("price_of_screens_a_m2"),
        s.price("price_of_a_roller_sleeve"),
        s.price("price_of_a_brush"),
        s.price("price_of_a_mixing_pail"),
        s.price("price_of_protection_a_person_and_day"),
        s.price("price_of_a_gas_meter_a_day"),
        s.price("price_of_dust_disposal_a_kg"),
        s.price("price_of_solvent_disposal_a_l"));
  }
}
