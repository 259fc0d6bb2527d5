/**
 * Sheet 8 and the papers that people sign.
 *
 * <p>{@link ScopeSheet} (entry: what is done, what is not, what it costs, what advice was not
 * taken); {@link HandoverSheet} (entry: the papers handed over, each a page of its own).
 */
package slabwright.sheets.scope;
