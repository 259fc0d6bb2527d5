/**
 * The sign shop's drawing against the plan, before anything is cut. The drawing is found again in
 * the plan by its outlines, whatever its place, turn, size or mirroring, also with panels lying
 * apart and shop labels beside them; then everything that differs is said with its place.
 *
 * <p>{@link ReturnedFile} (entry: reads a file) and {@link ProofCheck} (entry) give a {@link
 * ProofReport} of {@link ProofFault} and {@link ProofNote}. The plan's side: {@link ProofPlan},
 * {@link PlannedPiece} with {@link Bitmap} and {@link ContourSamples}. The shop's: {@link
 * ShopDrawing}, {@link RingJoiner}, {@link DrawingContours}, {@link RingMoments}. Finding: {@link
 * PoseSearch}, {@link PoseCandidates}, {@link PoseRefinement}, {@link Pose}, {@link PoseFit}.
 * Judging: {@link PieceComparison}, {@link ShadingMeaning}.
 */
package slabwright.inlay.proof;
