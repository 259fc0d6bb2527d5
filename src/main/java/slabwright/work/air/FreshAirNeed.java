package slabwright.work.air;

import java.util.List;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;

/**
 * Fresh air that the worst step needs at its fastest plausible laying, in m³/min, the mixing factor
 * K included.
 *
 * @param fire keeps the steady mean at a quarter of the lower explosive limit (NFPA 30, IMC
 *     502.7.3.3)
 * @param health keeps the steady mean at the strictest 8-hour limits, solvents added together
 * @param byFloor 1 cfm for each square foot of floor (29 CFR 1910.106(e)(3)(v)(a))
 * @param layerFire like {@code fire} with all vapour in the lowest metre
 * @param layerHealth like {@code health} with all vapour in the lowest metre
 */
public record FreshAirNeed(
    double fire, double health, double byFloor, double layerFire, double layerHealth) {
  /** The share of the lower explosive limit that must not be passed. */
  public static final double FIRE_SHARE = 0.25;

  static FreshAirNeed of(List<VapourStep> steps, AirVolume space, double mixing, double celsius) {
    AirLevel worst = AirLevel.CLEAN;
    for (VapourStep step : steps) {
      worst = worst.worse(emission(step, celsius));
    }
    double fire = worst.lel() * mixing / FIRE_SHARE;
    double health = worst.eightHour() * mixing;
    double cfmPerSquareFoot = RateFormat.CUBIC_FOOT_M3 / (QuantityFormat.SQUARE_FOOT_MM2 / 1e6);
    return new FreshAirNeed(
        fire,
        health,
        space.floor() * cfmPerSquareFoot,
        fire * space.layerFactor(),
        health * space.layerFactor());
  }

  /** What all of it asks for, the careful reading. */
  public double largest() {
    return Math.max(layerFire, Math.max(layerHealth, byFloor));
  }

  /** The step's vapour a minute at the fastest, m³ over each limit. */
  static AirLevel emission(VapourStep step, double celsius) {
    AirLevel sum = AirLevel.CLEAN;
    for (Solvent s : Mixture.solvents(List.of(step))) {
      sum = sum.plus(AirLevel.of(s, step.fastestRate(s, celsius)));
    }
    return sum;
  }
}
