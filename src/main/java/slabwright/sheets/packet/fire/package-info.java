/**
 * What the fire authority, the building's manager and a safety officer get.
 *
 * <p>{@link FireSafetyPacket} (entry): for each {@link SolventFloor} a {@link FirePlan} (what an
 * inspector looks for on the floor), {@link PermitForm} with each {@link SolventUse}. {@link
 * MeterPage} is the crew's own: the same plans, with lines to write readings on.
 */
package slabwright.sheets.packet.fire;
