package slabwright.work.air;

/**
 * The air over a floor.
 *
 * @param floor m²
 * @param height m
 */
public record AirVolume(double floor, double height) {
  /** How high the layer of the second figure is, in m. */
  public static final double LAYER = 1;

  public AirVolume {
    if (!(floor > 0 && height > 0)) {
      throw new IllegalArgumentException("a room needs a floor and a height");
    }
  }

  /** From a floor in mm² and a ceiling height in mm. */
  public static AirVolume of(double floorMm2, double heightMm) {
    return new AirVolume(floorMm2 / 1e6, heightMm / 1000);
  }

  public double volume() {
    return floor * height;
  }

  /** How many times the room's mean the lowest metre holds, when all vapour lies there. */
  public double layerFactor() {
    return Math.max(1, height / LAYER);
  }
}
