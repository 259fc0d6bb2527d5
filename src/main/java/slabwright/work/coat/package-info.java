/**
 * Colour and coats: how much of a product, in which kits and batches, how thick, in which lanes.
 * Areas in mm², volumes in mm³, coverage in mm²/mm³, thickness in mm, work rates in mm² an hour.
 *
 * <p>{@link CoatPlan} (entry) of {@link CoatParameters}, made by {@link CoatPlanner}: {@link
 * ProductAmount}, {@link FilmThickness}, {@link Kits}. {@link Batches}: {@link BatchParameters},
 * {@link Batches}, {@link BatchLanes}. Lanes: {@link LaneParameters}, {@link LaneGrid}, {@link
 * LaneCells}, {@link LaneOrder}, {@link LaneCandidate}, {@link LanePlan}, {@link Lane}. In
 * sections: {@link CoatDivider} with {@link DivisionParameters} and {@link DivisionLines} gives a
 * {@link DividedCoat}. Choosing: {@link SealerAdvice} of {@link SealerParameters}, {@link
 * ClientAdvice}, {@link FinishSuggestion}.
 */
package slabwright.work.coat;
