package slabwright.inlay.proof;

import slabwright.units.LengthFormat;
import slabwright.units.Message;

/**
 * What a returned drawing may differ by and still be cut. All lengths in millimetres on the floor,
 * whatever the size of the job. The usual values are this house's own choice: less than a crew sees
 * and more than a cutter's own unsteadiness.
 *
 * @param edge the largest deviation of any edge, of an opening or of the blank
 * @param move the farthest that scale, stretch, turn and shift in the blank together may move a
 *     point of an opening
 * @param thin what is not thicker than this is a sliver of an edge and no piece
 * @param pieceArea mm²; from here on what is thicker than {@code thin} is a piece missing or added
 * @param pieceThick from this thickness on it is a piece, however small
 */
public record ProofLimits(
    double edge, double move, double thin, double pieceArea, double pieceThick) {
  public static final ProofLimits USUAL = new ProofLimits(1, 2, 1, 25, 3);

  private static final double BEYOND = 3;

  /**
   * Limits.
   *
   * @throws IllegalArgumentException when one is not a positive number
   */
  public ProofLimits {
    for (double v : new double[] {edge, move, thin, pieceArea, pieceThick}) {
      if (!(v > 0) || Double.isInfinite(v)) {
        throw new IllegalArgumentException("a limit is a positive number");
      }
    }
  }

  /** One sentence that says them, in millimetres, as they are set. */
  public Message message() {
    return Message.of(
        "inlay.proof-limits.all",
        LengthFormat.plain(edge),
        LengthFormat.plain(move),
        LengthFormat.plain(thin),
        LengthFormat.plain(pieceArea),
        LengthFormat.plain(pieceThick));
  }

  /**
   * These, widened to what a drawing in doubt can show at all: what strays less may be the
   * drawing's own. The doubt holds for all but 5 % of its edges, so the rest is allowed for.
   *
   * @param doubt mm
   */
  ProofLimits beyond(double doubt) {
    double most = BEYOND * doubt;
    return new ProofLimits(
        Math.max(edge, most),
        Math.max(move, most),
        Math.max(thin, most),
        Math.max(pieceArea, most * most),
        Math.max(pieceThick, most));
  }

  /** The smallest length: a drawing whose doubt is larger can't be judged by these limits. */
  double smallest() {
    return Math.min(Math.min(edge, move), pieceThick);
  }
}
