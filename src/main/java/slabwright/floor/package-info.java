/**
 * Who owns each square millimetre of a floor area: zones, net areas, classed edges, machine reach
 * and hand work. Everything is a value read off one noding of the plan. Areas in mm², lengths in
 * mm, the site's frame.
 *
 * <p>{@link FloorTakeoff} (entry), {@link QuickTakeoff} (a rough one while something is dragged).
 *
 * <p>While a mark, a corner or a wall is moved: {@link FollowedTakeoff} (entry) gives {@link
 * FloorFigures}, exact, from a {@link LocalTakeoff} of each {@link FloorWindow} that the move
 * reaches, for walls by way of {@link OutlineChange}; whether machines still get there is known
 * from {@link WindowAccess} and {@link FreeRaster}, what stays as it was from {@link FloorBefore}.
 *
 * <p>{@link FloorArrangement} is the noding, with {@link OutlineRing}; what is read off it: {@link
 * Zone}, {@link Obstacle}, {@link EdgeClassifier} giving {@link Edge} and {@link Transition}
 * ({@link LineMerger}), {@link EdgeTally} with {@link FloorCorners} and {@link FreeEnds}, {@link
 * CutIn}, {@link LevelStep}, {@link TrenchWork}.
 *
 * <p>Machines: {@link GrindingOp} gives a {@link GrindingSplit} by way of {@link MachineReach}
 * ({@link BodyTurnOp} for long bodies, with {@link Hull}), {@link WayIn}, {@link ReachedFloor},
 * {@link MachineShare}, {@link GrindingRules}, {@link GrindingFaces}, {@link HandWorkPiece} and
 * {@link HandWorkKind}.
 *
 * <p>Besides: {@link EdgeStripAllocator} with {@link EdgeStrip} and {@link WorkingEdge}. {@link
 * FloorValidator} tells a {@link FloorNote}. What holds a machine up is asked in {@code
 * floor.reach}.
 */
package slabwright.floor;
