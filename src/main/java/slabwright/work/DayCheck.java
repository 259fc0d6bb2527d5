package slabwright.work;

import slabwright.units.Message;

/**
 * What nobody knows yet of the day of a coat: to be checked before it is laid, not fine.
 *
 * @param area id of its floor area
 * @param step id of the step
 */
public record DayCheck(String area, String step, Message what) {}
