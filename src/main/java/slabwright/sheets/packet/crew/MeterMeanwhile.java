package slabwright.sheets.packet.crew;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Optional;
import slabwright.sheets.packet.MeterLines;
import slabwright.sheets.packet.PacketContents;
import slabwright.work.MeterWatch;
import slabwright.work.air.MeterRule;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;

/** Other work of whoever reads the gas meter, while vapour of a step that is done still counts. */
record MeterMeanwhile(PacketContents job, DayPlan plan) {

  /** That the meter comes first; empty where no vapour counts, or somebody else reads it. */
  Optional<String> told(CrewDay.Work work) {
    ScheduledStep step = work.first().step();
    return plan.steps().stream()
        .filter(v -> MeterWatch.isAskedFor(job.work(), v.task().type()))
        .filter(v -> !v.end().isAfter(work.span().start()))
        .filter(v -> counts(v, work.span().start()))
        .max(Comparator.comparing(ScheduledStep::end))
        .flatMap(v -> MeterWatch.of(plan, v).person().stream().boxed().findFirst())
        .filter(step.who().persons()::contains)
        .map(
            p ->
                job.words()
                    .say(
                        "sheets.crew-step.meter-first",
                        new MeterLines(job).named(p),
                        MeterRule.USUAL_MINUTES));
  }

  /** By the plan's own times, not by the rounded ones that others are told. */
  private static boolean counts(ScheduledStep vapour, LocalDateTime at) {
    return vapour
        .task()
        .keepOut()
        .filter(k -> vapour.end().plus(k.after()).isAfter(at))
        .isPresent();
  }
}
