package slabwright.inlay.panel;

import slabwright.shape.Bounds;

/** A side of the blank as read. */
public enum BlankSide {
  TOP,
  BOTTOM,
  LEFT,
  RIGHT;

  /** How far a box's middle lies from this side, up to a constant; greater is farther. */
  double farness(Bounds b) {
    return switch (this) {
      case TOP -> b.middle().y();
      case BOTTOM -> -b.middle().y();
      case LEFT -> b.middle().x();
      case RIGHT -> -b.middle().x();
    };
  }
}
