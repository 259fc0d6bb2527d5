package slabwright.work.handover;

import java.util.List;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.prep.MixPlan;
import slabwright.work.step.StepKind;

/**
 * Nozzles of filler that mixes in them: one a cartridge of each floor, and another for every
 * further day that the same floor is filled on, because what stands in a nozzle sets. Common
 * practice, no source.
 */
final class MixingNozzles {
  private final WorkPlan plan;

  private MixingNozzles(WorkPlan plan) {
    this.plan = plan;
  }

  /** What goes along as a spare; empty where nothing mixes in its nozzle. */
  static Optional<Message> of(WorkPlan plan) {
    return new MixingNozzles(plan).told();
  }

  private Optional<Message> told() {
    List<MixPlan> mixing =
        plan.areas().stream()
            .flatMap(a -> a.prep().mixing().stream())
            .filter(m -> m.nozzle() && m.sets())
            .toList();
    if (mixing.isEmpty()) {
      return Optional.empty();
    }
    if (mixing.stream().anyMatch(m -> !m.mixes().isKnown())) {
      return Optional.of(Message.of("work.load-list.cartridge-gun"));
    }
    int cartridges = mixing.stream().mapToInt(MixPlan::count).sum();
    return Optional.of(
        Message.of("work.load-list.cartridge-gun-and-nozzles", cartridges + furtherDays()));
  }

  private long furtherDays() {
    return plan.days().maybe().map(DayPlan::steps).orElse(List.of()).stream()
        .filter(this::fillsFromCartridges)
        .mapToLong(s -> s.spans().stream().map(x -> x.start().toLocalDate()).distinct().count() - 1)
        .sum();
  }

  private boolean fillsFromCartridges(ScheduledStep step) {
    Optional<AreaWorkPlan> area = plan.area(step.task().type().areaId());
    return step.task().type().kind() == StepKind.FILL_GAPS
        && area.flatMap(a -> a.prep().mixing(step.task().type().subject()))
            .filter(MixPlan::nozzle)
            .isPresent();
  }
}
