/**
 * A plan on disk and what lies beside it: its journal, releases, tape files and shop book.
 *
 * <p>{@link PlanFiles} (entry) opens a plan as an {@link OpenedPlan}, finds what a crash left (a
 * {@link LeftWork}) and saves; a plan that was never saved has a {@link PlanLocation} all the same.
 * {@link BackgroundWriter} writes off the asking thread, {@link JournalWriter} every edit, in a
 * journal that its window alone has (a {@link PlanHold}). Beside the plan: {@link ReleaseFiles} (a
 * {@link FrozenRelease}, and what changed since, looked at again when a {@link GraphicStamp}
 * differs), {@link TapeFiles}, {@link UnfinishedWalkFile}, {@link ShopBookFiles}. A plan begins
 * with a room of tape readings by {@link TapedPlan}. {@link IssuedRelease} issues a release of a
 * plan on disk; {@link PlanComparison} sets a plan beside a release, {@link FigureChange} by
 * figure.
 */
package slabwright.project.plan;
