package slabwright.site;

/** Who may grind a kind of floor. */
public enum Worker {
  MACHINE,
  HAND,
  NOBODY
}
