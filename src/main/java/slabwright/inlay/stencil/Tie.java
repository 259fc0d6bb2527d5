package slabwright.inlay.stencil;

import slabwright.shape.Line;
import slabwright.shape.Vec;

/**
 * A strip of mask that holds a loose piece to the rest.
 *
 * @param from on the loose piece
 * @param to on the mask it is held to
 * @param width across, mm
 */
public record Tie(Vec from, Vec to, double width) {
  /** How long the strip is in the open, mm. */
  public double length() {
    return from.distanceTo(to);
  }

  Line line() {
    return Line.of(from, to);
  }
}
