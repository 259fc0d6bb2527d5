/**
 * Cards of the Prep stage: what machines reach and what is left to hands.
 *
 * <p>{@link MachinesCard} (entry), then {@link HandWorkCard}, {@link ReachCard} and {@link
 * EdgesCard}; all read the take-off of the selected floor area.
 */
package slabwright.desk.cards.prep;
