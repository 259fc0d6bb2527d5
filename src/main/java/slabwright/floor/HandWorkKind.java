package slabwright.floor;

import slabwright.units.Message;

/** Why a piece of floor is hand work. */
public enum HandWorkKind {
  /** Along an edge: under the machine's body, beside its grinding head. */
  EDGE_STRIP(Message.of("floor.hand-work-kind.edge-strip")),
  /** In a corner that the body does not reach into. */
  CORNER(Message.of("floor.hand-work-kind.corner")),
  /** A trench that is proud or low and not yet levelled. */
  TRENCH(Message.of("floor.hand-work-kind.trench")),
  /** Round a drain, a floor box or another mark that only hand tools may work on. */
  HAND_ONLY(Message.of("floor.hand-work-kind.hand-only")),
  /** Floor that the machine cannot get to or does not fit into. */
  POCKET(Message.of("floor.hand-work-kind.pocket"));

  private final Message word;

  HandWorkKind(Message word) {
    this.word = word;
  }

  public Message word() {
    return word;
  }
}
