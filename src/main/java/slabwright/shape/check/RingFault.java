package slabwright.shape.check;

import slabwright.shape.Vec;

/**
 * A fault of a ring that filling by a rule puts right without asking.
 *
 * @param layer id of the layer
 * @param ring index of the ring in its layer, from 0
 */
public record RingFault(Kind kind, int layer, int ring, Vec at) {
  /** What is wrong with the ring. */
  public enum Kind {
    /** It crosses or touches itself; the rule decides what is inside. */
    CROSSES_ITSELF,
    /** An earlier ring of its layer has the same corners. */
    REPEATED,
    /** It encloses nothing on the grid. */
    NO_AREA
  }
}
