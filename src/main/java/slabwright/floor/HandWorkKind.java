package slabwright.floor;

/** Why a piece of floor is hand work. */
public enum HandWorkKind {
  /** Along an edge: under the machine's body, beside its grinding head. */
  EDGE_STRIP("edge strip"),
  /** In a corner that the body does not reach into. */
  CORNER("corner"),
  /** A trench that is proud or low and not yet levelled. */
  TRENCH("trench"),
  /** Round a drain, a floor box or another mark that only hand tools may work on. */
  HAND_ONLY("hand tools only"),
  /** Floor that the machine cannot get to or does not fit into. */
  POCKET("pocket");

  private final String word;

  HandWorkKind(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
