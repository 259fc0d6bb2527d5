package slabwright.site;

/** How a trench lies against the old slab. */
public enum TrenchLevel {
  PROUD,
  FLUSH,
  LOW
}
