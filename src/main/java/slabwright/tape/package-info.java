/**
 * A room measured by tape brought to agree: walls and diagonals in, an outline and what to measure
 * again out.
 *
 * <p>{@link RoomAdjustment} (entry: of a {@link TapeRoom}) gives a {@link RoomResult}, at best an
 * {@link AdjustedRoom}. Read first {@link TapeRoom}, {@link Reading}, {@link WallNote}, {@link
 * CornerName} and {@link TapeError}; then {@link RoomValidator}, {@link RoomObservations} (readings
 * to observations), {@link AdjustmentSolver} with {@link AdjustmentSolution}, {@link
 * AdjustedRoomBuilder}; what it tells: {@link ClosingReport}, {@link ReadingReport}, {@link
 * ErrorEllipse}, {@link OutlineArea}.
 *
 * <p>Advice: {@link TapeAdvisor} gives {@link TapeAdvice} by {@link SuspectAdvice}, {@link
 * TraverseAdvice}, {@link NextDiagonal}, {@link LineOfSight}, {@link Misreading}, {@link
 * SlipSearch}; {@link ClosingRemedy} says which reading would close it, {@link Readings} changes
 * single ones. {@link TapedOutline} makes a floor area of it, {@link TapeWalk} is a room being
 * walked along, {@link RoomText} and {@link ReadingWords} say it.
 */
package slabwright.tape;
