/**
 * The model: a {@link Site} and what stands on it, records only. Lengths in mm, frame: x right, y
 * up.
 *
 * <p>{@link Site} (entry), then {@link FloorArea} with {@link OutlinePiece}, {@link PieceKind},
 * {@link OutlineShape}, {@link Doorway} and {@link EdgeClass}. A {@link Mark} has a {@link
 * MarkKind}, its {@link MarkType} says what a kind means (floor, edge, who works on it by {@link
 * GrindingAccess}), and a {@link Form}. An {@link Inlay} has a {@link StencilSpec} with {@link
 * StencilChanges}, {@link HandSeams}, {@link ColourChoice} and {@link Overspray}.
 *
 * <p>Of the job: {@link Machine}, {@link Slab} with {@link MoistureReading}, {@link AirSpace},
 * {@link Setting}, {@link Finish}, {@link Exposure}, {@link FloorUse}, {@link Declined} advice by
 * {@link AdviceId}, {@link TrenchLevel}; of the plan: {@link Release} and {@link Underlay}. {@link
 * Spot} is a point as typed, {@link Move} a rigid motion.
 */
package slabwright.site;
