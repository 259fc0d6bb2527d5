package slabwright.sheets.packet.crew;

import java.util.List;
import java.util.Optional;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.TimeFormat;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.prep.Mix;
import slabwright.work.prep.MixPlan;
import slabwright.work.step.StepKind;

/**
 * Filler out of cartridges goes on with the one that an earlier floor left over, with a new nozzle:
 * as many are bought for the job. Common practice, no source.
 */
final class BegunCartridge {
  /** Of a cartridge: less than this is none. */
  private static final double SLACK = 1e-6;

  private final PacketContents job;
  private final TimeFormat times;

  BegunCartridge(PacketContents job, TimeFormat times) {
    this.job = job;
    this.times = times;
  }

  /** What is left from before and how many new ones; empty where that saves none. */
  Optional<String> told(ScheduledStep step) {
    Optional<MixPlan> own = mixing(step);
    List<ScheduledStep> before = before(step);
    if (own.isEmpty() || before.isEmpty()) {
      return Optional.empty();
    }
    double cartridge = own.get().largest();
    double used = before.stream().flatMap(s -> mixing(s).stream()).mapToDouble(this::used).sum();
    long opened = cartridges(used, cartridge);
    long fresh = cartridges(used + used(own.get()), cartridge) - opened;
    return fresh < own.get().count()
        ? Optional.of(
            job.words()
                .say(
                    "sheets.crew-step.begun-cartridge",
                    times.weekday(before.get(before.size() - 1).start(), job.work().dated()),
                    fresh))
        : Optional.empty();
  }

  private static long cartridges(double mm3, double each) {
    return (long) Math.ceil(mm3 / each - SLACK);
  }

  private double used(MixPlan plan) {
    return plan.mixes().maybe().orElse(List.of()).stream().mapToDouble(Mix::used).sum();
  }

  private Optional<MixPlan> mixing(ScheduledStep step) {
    return job.work()
        .area(step.task().type().areaId())
        .filter(a -> step.task().type().kind() == StepKind.FILL_GAPS)
        .flatMap(a -> a.prep().mixing(step.task().type().subject()))
        .filter(m -> m.nozzle() && m.count() > 0);
  }

  private List<ScheduledStep> before(ScheduledStep step) {
    return CrewDays.days(job.work()).map(DayPlan::steps).orElse(List.of()).stream()
        .takeWhile(s -> !s.task().id().equals(step.task().id()))
        .filter(s -> mixing(s).isPresent())
        .toList();
  }
}
