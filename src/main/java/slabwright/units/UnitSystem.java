package slabwright.units;

/** How numbers are shown. What is stored never depends on it. */
public enum UnitSystem {
  FEET_INCHES,
  METRIC
}
