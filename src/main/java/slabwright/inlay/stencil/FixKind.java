package slabwright.inlay.stencil;

import slabwright.units.Message;

/** A way to mend what a check found. Nothing is changed until a person accepts it. */
public enum FixKind {
  WIDEN_VINYL,
  DROP_SCRAPS,
  DROP_LOOSE,
  ROUND_NEEDLES;

  /** What undo names. */
  public Message step() {
    return switch (this) {
      case WIDEN_VINYL -> Message.of("inlay.fix-kind.widen-thin-vinyl");
      case DROP_SCRAPS -> Message.of("inlay.fix-kind.drop-scraps");
      case DROP_LOOSE -> Message.of("inlay.fix-kind.drop-small-loose-pieces");
      case ROUND_NEEDLES -> Message.of("inlay.fix-kind.round-needle-points");
    };
  }
}
