package slabwright.work;

import slabwright.units.Message;

/**
 * What nobody knows yet, such as the night after a coat or where a doorway leads: to be checked,
 * not fine. Or what the order of floors rests on.
 *
 * @param area id of its floor area
 * @param step id of the step; empty where it is about the floor area
 */
public record DayCheck(String area, String step, Message what) {}
