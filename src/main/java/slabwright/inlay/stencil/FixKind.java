package slabwright.inlay.stencil;

/** A way to mend what a check found. Nothing is changed until a person accepts it. */
public enum FixKind {
  WIDEN_VINYL("widen thin vinyl", "Widen"),
  DROP_SCRAPS("drop scraps of openings", "Drop"),
  DROP_LOOSE("drop small loose pieces", "Drop"),
  ROUND_NEEDLES("round needle points", "Round");

  private final String step;
  private final String offer;

  FixKind(String step, String offer) {
    this.step = step;
    this.offer = offer;
  }

  /** What undo names. */
  public String step() {
    return step;
  }

  /** One word for the offer. */
  public String offer() {
    return offer;
  }
}
