package slabwright.work.days;

import slabwright.units.Message;

/**
 * What the owner sees to while it lasts, or at one moment, for the client's calendar.
 *
 * @param id tells its kind from the others'
 * @param summary what the calendar shows of it
 * @param why what else there is to know
 * @param span of no length where it is one moment
 */
public record OwnerDuty(String id, Message summary, Message why, TimeSpan span) {}
