package slabwright.work.days;

/** What planning the days gives. */
public sealed interface Planned {
  /** Every step found a place. */
  record Days(DayPlan plan) implements Planned {}

  /** It can't be planned; the sentence says which step, why and what to do. */
  record Refused(String sentence) implements Planned {}
}
