package slabwright.floor;

import slabwright.units.Message;

/** Why a piece of floor is hand work. */
public enum HandWorkKind {
  /** Along an edge: under the machine's body, beside its grinding head. */
  EDGE_STRIP,
  /** In a corner that the body does not reach into. */
  CORNER,
  /** A trench that is proud or low and not yet levelled. */
  TRENCH,
  /** Round a drain, a floor box or another mark that only hand tools may work on. */
  HAND_ONLY,
  /** Floor that the machine cannot get to or does not fit into. */
  POCKET;

  public Message word() {
    return switch (this) {
      case EDGE_STRIP -> Message.of("floor.hand-work-kind.edge-strip");
      case CORNER -> Message.of("floor.hand-work-kind.corner");
      case TRENCH -> Message.of("floor.hand-work-kind.trench");
      case HAND_ONLY -> Message.of("floor.hand-work-kind.hand-only");
      case POCKET -> Message.of("floor.hand-work-kind.pocket");
    };
  }
}
