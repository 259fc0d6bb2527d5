/**
 * From a blank to panels a roll wide: where the seams lie, what each costs, and in which order the
 * panels are cut and laid. Strips run along the roll. Inside, u runs across the strips and v along
 * them; all that leaves is in the blank's frame (mm from its top-left corner as read, x right, y
 * down).
 *
 * <p>{@link SeamPlanner} (entry) gives a {@link PanelPlan} from {@link PanelParameters}, {@link
 * Roll}, {@link StripDirection}, {@link BlankSide} and {@link SeamWeights}. Search: {@link
 * SeamLayoutSearch}, {@link SeamLayout}, {@link Strip}, {@link SeamCandidates}, {@link
 * SeamPlaceSearch}. Cost: {@link SeamCostFunction}, {@link SeamCost}, {@link EdgeLengthIndex},
 * {@link RingCoordinates}, {@link SeamSpan}. Making: {@link PanelBuilder}, {@link Panel}, {@link
 * Seam}, {@link WitnessMarkPlacer}, {@link WitnessMark}, {@link RegistrationPlacer}, {@link
 * RegistrationTick}. {@link LocalBlankPlanner} (entry) then gives a stencil vinyl only as large as
 * its colour needs, near pieces merged by {@link LocalBoxMerging}.
 */
package slabwright.inlay.panel;
