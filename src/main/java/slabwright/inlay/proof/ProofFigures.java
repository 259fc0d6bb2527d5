package slabwright.inlay.proof;

import slabwright.units.QuantityFormat;

/**
 * How much the drawing differs, faults or not; mm and mm².
 *
 * @param edge the largest deviation of an edge of an opening, pieces missing or added aside
 * @param move how far scale, stretch, turn and shift in the blank move a point of an opening
 * @param fat how much fatter all round the openings are; negative when thinner
 * @param slivers area of all differences that are no piece
 * @param doubt how well the drawing itself says where its edges are
 */
public record ProofFigures(double edge, double move, double fat, double slivers, double doubt) {
  static final ProofFigures NONE = new ProofFigures(0, 0, 0, 0, 0);

  /** The worse of both. */
  ProofFigures and(ProofFigures o) {
    return new ProofFigures(
        Math.max(edge, o.edge),
        Math.max(move, o.move),
        Math.abs(fat) >= Math.abs(o.fat) ? fat : o.fat,
        slivers + o.slivers,
        Math.max(doubt, o.doubt));
  }

  /** A percentage without its sign, with as many places as a small one needs. */
  static String percent(double percent) {
    double p = Math.abs(percent);
    return QuantityFormat.number(p, p < 1 ? 2 : 1);
  }
}
