/**
 * The sign shop's drawing against the plan, before anything is cut. The drawing is found again in
 * the plan by its outlines, whatever its place, turn, size or mirroring, also with panels lying
 * apart and shop labels beside them; then everything that differs is said with its place.
 *
 * <p>{@link ReturnedFiles} (entry: reads each {@link ReturnedFile}'s {@link ReturnedPage}s) and
 * {@link ProofBatch} (entry: finds which stencil each page shows, by a {@link Sighting}, or all of
 * them at once by their colours with {@link ColourSplit}, and puts pages together) or {@link
 * ProofCheck} (entry: one stencil, one drawing) give a {@link ProofReport}: a {@link ProofVerdict}
 * by {@link ProofLimits}, with {@link ProofFault}, {@link LabelFault}, {@link PanelFault}, {@link
 * ProofNote} and {@link ProofFigures}. The plan's side: {@link ProofPlan}, {@link PlannedPiece}
 * with {@link Bitmap}, {@link ContourSamples} and {@link EdgeSample}. The shop's: {@link
 * ShopDrawing} within its {@link DrawingBudget}, {@link RingJoiner}, {@link DrawingContours},
 * {@link ContourSegments}, {@link RingMoments}. Finding: {@link PoseSearch}, {@link PoseCandidates}
 * with {@link CrowdedMatches} and {@link PoseSet}, {@link PoseRefinement}, {@link Pose}, {@link
 * PoseFit}; {@link DrawingScale} and {@link ScaleRange} settle the size. Judging, sheet by sheet:
 * {@link SheetJudgement} lays the openings with {@link OpeningsFit} and {@link DrawnStrain}, the
 * sheet's edge with {@link BlankEdgeCheck} and {@link BlankFit}, and compares with {@link
 * OpeningsDifference} and {@link LetterRows}; {@link PanelLabels} reads the words; {@link
 * ShadingMeaning} is what the person says.
 */
package slabwright.inlay.proof;
