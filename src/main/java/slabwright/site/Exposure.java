package slabwright.site;

/** Aggregate exposure wanted, in the trade's order. */
public enum Exposure {
  CREAM,
  FINE,
  MEDIUM,
  COARSE
}
