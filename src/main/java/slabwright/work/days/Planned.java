package slabwright.work.days;

import slabwright.units.Message;

/** What planning the days gives. */
public sealed interface Planned {
  /** Every step found a place. */
  record Days(DayPlan plan) implements Planned {}

  /** It can't be planned; the sentence says which step, why and what to do. */
  record Refused(Message sentence) implements Planned {}
}
