package slabwright.desk.canvas;

import slabwright.units.UnitSystem;

/** Round lengths that suit a scale: for the lines on the table, the scale bar and snapping. */
final class GridPitch {
  private static final double[] FEET = {
    25.4 / 8, 25.4 / 4, 25.4 / 2, 25.4, 76.2, 152.4, 304.8, 1524, 3048, 15240, 30480, 152400
  };
  private static final double[] METRES = {
    1, 5, 10, 50, 100, 250, 500, 1000, 2000, 5000, 10000, 50000, 100000
  };

  private GridPitch() {}

  /** The smallest round length that is at least {@code pixels} wide, mm. */
  public static double pitch(double pixelsPerMm, double pixels, UnitSystem units) {
    double[] steps = units == UnitSystem.METRIC ? METRES : FEET;
    for (double step : steps) {
      if (step * pixelsPerMm >= pixels) {
        return step;
      }
    }
    return steps[steps.length - 1];
  }
}
