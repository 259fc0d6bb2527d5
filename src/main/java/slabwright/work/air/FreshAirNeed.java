package slabwright.work.air;

import java.util.List;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;

/**
 * Fresh air that the worst step needs, in m³/min, the mixing factor K included.
 *
 * @param fire keeps the steady mean at a quarter of the lower explosive limit (NFPA 30, IMC
 *     502.7.3.3)
 * @param health keeps the steady mean at the strictest 8-hour limits, solvents added together
 * @param byFloor 1 cfm for each square foot of floor (29 CFR 1910.106(e)(3)(v)(a))
 */
public record FreshAirNeed(double fire, double health, double byFloor) {
  /** The share of the lower explosive limit that must not be passed. */
  public static final double FIRE_SHARE = 0.25;

  static FreshAirNeed of(List<VapourStep> steps, AirVolume space, double mixing, double celsius) {
    double fire = 0;
    double health = 0;
    for (VapourStep step : steps) {
      fire = Math.max(fire, lelRate(step, celsius) * mixing / FIRE_SHARE);
      health = Math.max(health, limitRate(step, celsius) * mixing);
    }
    double cfmPerSquareFoot = RateFormat.CUBIC_FOOT_M3 / (QuantityFormat.SQUARE_FOOT_MM2 / 1e6);
    return new FreshAirNeed(fire, health, space.floor() * cfmPerSquareFoot);
  }

  public double largest() {
    return Math.max(fire, Math.max(health, byFloor));
  }

  /** The step's vapour weighed by one over each solvent's explosive limit. */
  static double lelRate(VapourStep step, double celsius) {
    return Mixture.solvents(List.of(step)).stream()
        .mapToDouble(s -> step.rate(s, celsius) / s.lel())
        .sum();
  }

  private static double limitRate(VapourStep step, double celsius) {
    return Mixture.solvents(List.of(step)).stream()
        .mapToDouble(
            s ->
                s.strictest(ExposureLimit.AveragingPeriod.EIGHT_HOURS)
                    .map(l -> step.rate(s, celsius) / l.share())
                    .orElse(0.0))
        .sum();
  }
}
