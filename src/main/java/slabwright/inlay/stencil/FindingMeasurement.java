package slabwright.inlay.stencil;

import java.util.List;

/**
 * What a check of one stencil measured, so that findings of a kind can be told in one sentence.
 *
 * @param kind what was found
 * @param layer the stencil's place in the laying order
 * @param limit the size that film and hand allow; mm, or mm² for pieces
 * @param sizes one for each place
 */
public record FindingMeasurement(Kind kind, int layer, double limit, List<Size> sizes) {
  public FindingMeasurement {
    sizes = List.copyOf(sizes);
  }

  /** What a stencil is checked for. */
  public enum Kind {
    THIN_MASK,
    NARROW_OPENING,
    SMALL_LOOSE_PIECE,
    SCRAP,
    NEEDLE_OF_VINYL,
    NEEDLE_OF_OPENING
  }

  /**
   * How large one place is.
   *
   * @param amount width or length in mm, or area in mm²
   * @param degrees how sharp; 0 for what is no needle
   */
  public record Size(double amount, double degrees) {}
}
