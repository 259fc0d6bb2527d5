/**
 * The sign shop's drawing against the plan, before anything is cut.
 *
 * <p>Entry point: {@link slabwright.inlay.proof.ProofCheck}. The drawing is found again in the plan
 * by its outlines, whatever its place, turn, size or mirroring, also with panels lying apart and
 * shop labels beside them; then everything that differs is said with its place.
 */
package slabwright.inlay.proof;
