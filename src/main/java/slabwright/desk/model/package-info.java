/**
 * The core state, no screen: what is open, what is selected, what runs. Knows none of its own
 * folders.
 *
 * <p>{@link Desk} (entry: the open site; its push is the one door for a change), {@link Selection}
 * ({@link Stage}, floor area, each selected {@link PlanItem}), {@link DeskContext} (what all
 * screens share), {@link DeskSettings}, {@link Signal}. Then the work beside the screen: {@link
 * BackgroundTasks} (one after another), {@link Computed} (a value of which only the newest {@link
 * Wish} counts), {@link ProgressMonitor}, {@link UnexpectedFault}.
 */
package slabwright.desk.model;
