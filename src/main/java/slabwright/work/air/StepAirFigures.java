package slabwright.work.air;

import slabwright.units.Message;
import slabwright.work.step.StepType;

/**
 * What the air gets to during one step, what is left of the steps before included.
 *
 * @param type which step of the plan it is
 * @param peakLel the highest share of the lower explosive limit while it is laid, room mean
 * @param layerPeakLel the same with all vapour in the lowest metre
 * @param health the highest level while it is laid as a multiple of the strictest 8-hour limits,
 *     solvents added together, room mean
 * @param toHealth from that level down to the limits, counted from the step's end
 * @param layerToHealth the same from the level in the lowest metre, which is what people who kneel
 *     breathe: the longer of the two, and the one others are kept out by
 */
public record StepAirFigures(
    StepType type,
    Message name,
    double from,
    double minutes,
    double peakLel,
    double layerPeakLel,
    double health,
    ClearingTime toHealth,
    ClearingTime layerToHealth) {

  /**
   * Counted from the step's end but from its highest level, which is never under the level at its
   * end: so it is not shorter than a careful reading of the curve.
   */
  static StepAirFigures of(
      VapourStep s,
      ConcentrationCurve lel,
      ConcentrationCurve health,
      WellMixedRoom room,
      double layer) {
    double end = s.from() + s.minutes();
    double peak = lel.peakBetween(s.from(), end);
    double breathed = health.peakBetween(s.from(), end);
    return new StepAirFigures(
        s.type(),
        s.name(),
        s.from(),
        s.minutes(),
        peak,
        peak * layer,
        breathed,
        room.clearing(breathed, 1),
        room.clearing(breathed * layer, 1));
  }
}
