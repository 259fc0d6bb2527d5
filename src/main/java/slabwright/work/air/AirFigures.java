package slabwright.work.air;

import java.util.ArrayList;
import java.util.List;
import slabwright.units.Message;

/**
 * What the air gets to with a stated amount of fresh air. Peaks and 15-minute means are of each
 * step at its fastest plausible laying, 8-hour means of the usual one: the vapour in all is the
 * same. Readings in the lowest metre are the careful ones and rule.
 *
 * @param airflow m³/min stated, 0 for a closed room
 * @param lel the share of the lower explosive limit over time, room mean
 * @param peakLel its highest value; may pass 1
 * @param peakStep the step during which it is reached
 * @param layerPeakLel the same with all vapour in the lowest metre
 * @param limits every published limit of every solvent
 * @param together worst 8-hour mean of all solvents, each over its strictest limit, added; above 1
 *     is too much
 * @param layerTogether the same in the lowest metre
 * @param toHealth from the peak down to the strictest 8-hour limits
 * @param toFire from the peak down to a tenth of the lower explosive limit
 * @param layerToHealth like {@code toHealth} in the lowest metre
 * @param layerToFire like {@code toFire} in the lowest metre
 * @param steps step by step, each from its own peak
 */
public record AirFigures(
    double airflow,
    ConcentrationCurve lel,
    double peakLel,
    Message peakStep,
    double layerPeakLel,
    List<LimitComparison> limits,
    double together,
    double layerTogether,
    ClearingTime toHealth,
    ClearingTime toFire,
    ClearingTime layerToHealth,
    ClearingTime layerToFire,
    List<StepAirFigures> steps) {
  /** A tenth of the explosive limit: a hazardous atmosphere (29 CFR 1926.1202). */
  public static final double HAZARDOUS_SHARE = 0.1;

  public AirFigures {
    limits = List.copyOf(limits);
    steps = List.copyOf(steps);
  }

  static AirFigures of(
      List<VapourStep> steps, AirVolume space, double airflow, double mixing, double celsius) {
    WellMixedRoom room = new WellMixedRoom(space.volume(), airflow / mixing);
    double layer = space.layerFactor();
    ConcentrationCurve lel = room.curve(Mixture.fastest(steps, room, celsius, s -> 1 / s.lel()));
    ConcentrationCurve health =
        room.curve(Mixture.fastest(steps, room, celsius, AirFigures::healthWeight));
    double together =
        room.curve(Mixture.usual(steps, celsius, AirFigures::healthWeight))
            .worstAverage(ExposureLimit.AveragingPeriod.EIGHT_HOURS.minutes());
    double peak = lel.peak().share();
    double breathed = health.peak().share();
    return new AirFigures(
        airflow,
        lel,
        peak,
        stepAt(steps, lel.peak().minute()),
        peak * layer,
        rows(steps, room, celsius, layer),
        together,
        together * layer,
        room.clearing(breathed, 1),
        room.clearing(peak, HAZARDOUS_SHARE),
        room.clearing(breathed * layer, 1),
        room.clearing(peak * layer, HAZARDOUS_SHARE),
        steps.stream().map(s -> StepAirFigures.of(s, lel, health, room, layer)).toList());
  }

  private static double healthWeight(Solvent s) {
    return s.strictest(ExposureLimit.AveragingPeriod.EIGHT_HOURS)
        .map(l -> 1 / l.share())
        .orElse(0.0);
  }

  private static Message stepAt(List<VapourStep> steps, double minute) {
    return steps.stream()
        .filter(s -> s.from() < minute && minute <= s.from() + s.minutes())
        .findFirst()
        .map(VapourStep::name)
        .orElse(Message.of("work.air-figures.no-step"));
  }

  private static List<LimitComparison> rows(
      List<VapourStep> steps, WellMixedRoom room, double celsius, double layer) {
    List<LimitComparison> rows = new ArrayList<>();
    for (Solvent s : Mixture.solvents(steps)) {
      ConcentrationCurve usual =
          room.curve(Mixture.usual(steps, celsius, x -> x.equals(s) ? 1 : 0));
      ConcentrationCurve fastest =
          room.curve(Mixture.fastest(steps, room, celsius, x -> x.equals(s) ? 1 : 0));
      s.limits()
          .forEach(
              limit -> {
                boolean shift = limit.span() == ExposureLimit.AveragingPeriod.EIGHT_HOURS;
                rows.add(LimitComparison.of(s, limit, shift ? usual : fastest, layer));
              });
    }
    return rows;
  }
}
