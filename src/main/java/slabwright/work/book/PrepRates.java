package slabwright.work.book;

/**
 * How fast the shop prepares a floor. Rates of areas in mm² an hour, of lengths in mm an hour, for
 * one person; dust in kg/mm².
 */
public record PrepRates(
    Figure<Double> trenchLevelling,
    Figure<Double> trenchDust,
    Figure<Double> residueMachine,
    Figure<Double> residueHand,
    Figure<Double> residueDust,
    Figure<Double> filling,
    Figure<Double> cleaning,
    Figure<Double> abrading) {

  static PrepRates read(BookSection s) {
    return new PrepRates(
        s.number("trench levelling", Dimension.AREA_RATE),
        s.number("trench dust", Dimension.MASS_PER_AREA),
        s.number("residue by machine", Dimension.AREA_RATE),
        s.number("residue by hand", Dimension.AREA_RATE),
        s.number("residue dust", Dimension.MASS_PER_AREA),
        s.number("filling", Dimension.RUN_RATE),
        s.number("cleaning", Dimension.AREA_RATE),
        s.number("abrading between coats", Dimension.AREA_RATE));
  }
}
