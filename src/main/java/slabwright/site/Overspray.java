package slabwright.site;

import slabwright.units.Length;

/** How far mist lands beyond the openings. */
public sealed interface Overspray {
  /** The reach is stated. */
  record Stated(Length reach) implements Overspray {
    @Override
    public double reachMm() {
      return reach.mm();
    }
  }

  /**
   * The reach follows from the nozzle: overrun + h·tan(θ/2) + drift.
   *
   * @param height of the nozzle over the floor, h
   * @param fanDegrees full angle of the fan, θ, below 180
   * @param overrun how far strokes run past the opening
   * @param drift allowance for moving air
   */
  record Fan(Length height, double fanDegrees, Length overrun, Length drift) implements Overspray {
    @Override
    public double reachMm() {
      return overrun.mm() + height.mm() * Math.tan(Math.toRadians(fanDegrees / 2)) + drift.mm();
    }
  }

  /** The reach in mm. */
  double reachMm();
}
