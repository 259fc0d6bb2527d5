/**
 * Sheet 8 and the papers that people sign.
 *
 * <p>{@link ScopeSheet} (entry: what is done, what is not, what it costs), {@link DeclinedBlock}
 * (advice not taken, and by whom); {@link HandoverSheet} (entry: the papers handed over, each a
 * page of its own).
 */
package slabwright.sheets.scope;
