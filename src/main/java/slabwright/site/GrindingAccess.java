package slabwright.site;

/** Who may grind a kind of floor. */
public enum GrindingAccess {
  MACHINE,
  HAND,
  NOBODY
}
