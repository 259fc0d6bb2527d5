package slabwright.sheets.packet.crew;

import java.time.LocalDateTime;
import java.util.Optional;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.TimeFormat;
import slabwright.units.QuarterHour;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;

/** What those are told who go on through the break, as a coat and a mist do. */
record CrewRest(PacketContents job, TimeFormat times, DayPlan plan) {

  /** Until when they rest; no hour where nothing is left for them that day. */
  Optional<String> told(CrewDay.Work work) {
    return work.parts().stream()
        .map(CrewDay.Part::step)
        .filter(s -> !plan.hours().restAfter(s.spans()).isZero())
        .findFirst()
        .map(
            s ->
                isGoingOn(s)
                    ? job.words().say("sheets.crew-step.rests-after", times.hour(until(s)))
                    : job.words().say("sheets.crew-step.no-rest"));
  }

  private LocalDateTime until(ScheduledStep s) {
    return QuarterHour.up(s.end().plus(plan.hours().restAfter(s.spans())));
  }

  private boolean isGoingOn(ScheduledStep s) {
    return plan.steps().stream()
        .filter(o -> o.who().persons().stream().anyMatch(s.who().persons()::contains))
        .flatMap(o -> o.spans().stream())
        .anyMatch(
            t ->
                !t.start().isBefore(s.end())
                    && t.start().toLocalDate().equals(s.end().toLocalDate()));
  }
}
