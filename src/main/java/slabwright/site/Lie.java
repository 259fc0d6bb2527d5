package slabwright.site;

/** How a trench lies against the old slab. */
public enum Lie {
  PROUD,
  FLUSH,
  LOW
}
