package slabwright.work.book;

/**
 * How fast the shop prepares a floor. Rates of areas in mm² an hour, of lengths in mm an hour, for
 * one person; dust in kg/mm².
 *
 * @param trenchLevellingDepth how much is ground off a proud trench at the rate of levelling, mm
 */
public record PrepRates(
    Figure<Double> trenchLevelling,
    Figure<Double> trenchDust,
    Figure<Double> trenchLevellingDepth,
    Figure<Double> residueMachine,
    Figure<Double> residueHand,
    Figure<Double> residueDust,
    Figure<Double> filling,
    Figure<Double> fillingFastest,
    Figure<Double> cleaning,
    Figure<Double> abrading) {

  static PrepRates read(BookSection s) {
    return new PrepRates(
        s.number("trench_levelling", BookDimension.AREA_RATE),
        s.number("trench_dust", BookDimension.MASS_PER_AREA),
        s.number("trench_levelling_depth", BookDimension.LENGTH),
        s.number("residue_by_machine", BookDimension.AREA_RATE),
        s.number("residue_by_hand", BookDimension.AREA_RATE),
        s.number("residue_dust", BookDimension.MASS_PER_AREA),
        s.number("filling", BookDimension.RUN_RATE),
        s.number("fastest_filling", BookDimension.RUN_RATE),
        s.number("cleaning", BookDimension.AREA_RATE),
        s.number("abrading_between_coats", BookDimension.AREA_RATE));
  }
}
