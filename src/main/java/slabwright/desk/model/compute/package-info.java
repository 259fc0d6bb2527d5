/**
 * Values worked out off the screen's thread and kept while they are true of the plan.
 *
 * <p>{@link SelectedAreaResults} (entry: the selected floor area, its take-off by {@link Takeoffs},
 * its inlays), {@link SelectedAreaRoutes}, {@link SelectedAreaWarnings} (by {@link FloorWarnings}),
 * {@link SeamCosts}. Of the whole site: {@link SiteComputation} (all floor areas and the work),
 * {@link SheetPages} from it; {@link Proofs}.
 */
package slabwright.desk.model.compute;
