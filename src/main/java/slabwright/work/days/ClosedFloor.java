package slabwright.work.days;

import slabwright.units.Message;

/**
 * A stretch in which a floor area is not open as usual, for the client's calendar.
 *
 * @param areaId tells two areas of one name apart
 * @param summary what the calendar shows of it, with the area's name
 * @param why what else there is to know
 */
public record ClosedFloor(String areaId, Message summary, Message why, TimeSpan span) {}
