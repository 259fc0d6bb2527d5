package slabwright.site;

/**
 * A moisture reading of the slab.
 *
 * @param value % relative humidity (F2170), lb per 1000 ft² in 24 h (F1869), 0 dry or 1 damp
 *     (D4263)
 */
public record MoistureReading(Test test, double value, String place) {
  /** The ASTM method that the reading follows. */
  public enum Test {
    F2170,
    F1869,
    D4263
  }
}
