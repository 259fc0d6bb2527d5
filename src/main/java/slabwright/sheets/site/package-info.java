/**
 * Sheet 1, the layout: a floor area with everything marked on it, its walls and doorways in tables.
 *
 * <p>{@link LayoutSheet} (entry and all of it); the plan itself is set by slabwright.sheets.plan.
 */
package slabwright.sheets.site;
