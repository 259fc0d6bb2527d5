package slabwright.site;

import slabwright.shape.Affine;

/**
 * A picture under the drawing, to trace over.
 *
 * @param file path relative to the plan's folder and inside it
 * @param placing from picture pixels (x right, y down) to site millimetres
 * @param caution what the picture does not show truly, to be said wherever it is; may be empty
 */
public record Underlay(String file, Affine placing, String caution) {
  /** A picture that nothing need be said of. */
  public Underlay(String file, Affine placing) {
    this(file, placing, "");
  }

  public Underlay withPlacing(Affine v) {
    return new Underlay(file, v, caution);
  }
}
