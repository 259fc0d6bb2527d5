/**
 * From the colours of a graphic to cut stencils: one blank for the inlay, openings in laying order,
 * the mask that stays, and what in it will give trouble. Knows no other part of the inlay. Frame:
 * millimetres from the blank's top-left corner as read, x right, y down.
 *
 * <p>{@link StencilSet} (entry) made by {@link StencilSetBuilder} from {@link DyeLayer} and {@link
 * StencilParameters}; {@link Stencil}, {@link LoosePiece}. Fixes: {@link FixKind}, {@link
 * AcceptedFixes}, {@link StencilFixOp}, {@link FixEffect}.
 *
 * <p>{@link StencilCheck} (entry) tells each {@link Finding} within {@link StencilLimits}: {@link
 * FindingMeasurement}, {@link FindingGroups}; {@link ThinPlaceFinder} ({@link ThinPlace}, {@link
 * InscribedDisc}, {@link InscribedDiscGroups}, {@link BoundarySegment}, {@link SegmentGrid});
 * {@link SharpCornerFinder} and {@link SharpCorner}.
 *
 * <p>Ties of a stencil that is used again: {@link TiePlan}, {@link TieSearch}, {@link Tie}, {@link
 * MaskPart}.
 */
package slabwright.inlay.stencil;
