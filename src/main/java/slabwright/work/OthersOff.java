package slabwright.work;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirScreening;
import slabwright.work.air.ClearingTime;
import slabwright.work.air.StepAirFigures;
import slabwright.work.air.VapourStep;
import slabwright.work.days.DayPlan;
import slabwright.work.days.KeepOut;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.StepWait;
import slabwright.work.days.WorkStep;

/**
 * Keeps others off the floor of every step that sets vapour free, and off the floors that its
 * vapour gets to: indoors until the air has cleared, and nowhere before what it lays is dry.
 * Outdoors and for a sample panel no air is reckoned; there the drying alone counts (common
 * practice, no source).
 */
final class OthersOff {
  private final List<AreaWorkPlan> areas;
  private final DayPlan days;

  OthersOff(List<AreaWorkPlan> areas, DayPlan days) {
    this.areas = areas;
    this.days = days;
  }

  /** The step with others kept off; itself where it sets no vapour free. */
  WorkStep keptOff(WorkStep task) {
    Optional<AreaWorkPlan> area = areas.stream().filter(a -> task.type().isOn(a.id())).findFirst();
    Optional<ScheduledStep> step = days.step(task.id());
    return area.isPresent() && step.isPresent() && MeterWatch.isAskedFor(area.get(), task.type())
        ? task.withKeepOut(keepOut(area.get(), step.get(), task))
        : task;
  }

  private KeepOut keepOut(AreaWorkPlan area, ScheduledStep step, WorkStep task) {
    Optional<ClearingTime> clearing = clearing(area, step);
    List<KeepOut.Beside> beside = beside(task);
    if (clearing.filter(ClearingTime.Never.class::isInstance).isPresent()) {
      return new KeepOut(
          Message.of("work.keep-out-op.solvent-vapour-without-fresh"),
          longer(Duration.between(step.end(), days.end()), wet(task)),
          beside);
    }
    if (clearing.isPresent() && clearing.get() instanceof ClearingTime.After after) {
      Duration gone = Duration.ofMinutes((long) Math.ceil(after.minutes()));
      return new KeepOut(
          Message.of("work.keep-out-op.solvent-vapour"), longer(gone, wet(task)), beside);
    }
    return new KeepOut(
        area.floor().isOutdoors()
            ? Message.of("work.keep-out-op.solvent-outdoors")
            : Message.of("work.keep-out-op.solvent-work"),
        wet(task),
        beside);
  }

  /** The step's own, with the vapour held low; empty where no air is reckoned. */
  private static Optional<ClearingTime> clearing(AreaWorkPlan area, ScheduledStep step) {
    return area.air().maybe().stream()
        .flatMap(a -> a.screening().stream())
        .filter(s -> releases(s, step.task()))
        .findFirst()
        .map(s -> clearing(s.stated().orElse(s.closed()), step));
  }

  private static boolean releases(AirScreening s, WorkStep task) {
    return s.steps().stream().map(VapourStep::type).anyMatch(task.type()::equals);
  }

  private static ClearingTime clearing(AirFigures figures, ScheduledStep step) {
    return figures.steps().stream()
        .filter(a -> a.type().equals(step.task().type()))
        .findFirst()
        .map(StepAirFigures::layerToHealth)
        .orElse(figures.toHealth());
  }

  private List<KeepOut.Beside> beside(WorkStep task) {
    return task.air().vapour().areas().stream()
        .flatMap(id -> areas.stream().filter(a -> a.id().equals(id)))
        .map(a -> new KeepOut.Beside(a.id(), a.name()))
        .toList();
  }

  /** How long what a step lays is wet: no shorter than what follows waits for it. */
  private Duration wet(WorkStep task) {
    return days.steps().stream()
        .flatMap(s -> s.task().waits().stream())
        .filter(w -> w.after().equals(task.id()))
        .map(StepWait::atLeast)
        .reduce(task.air().wet().after(), OthersOff::longer);
  }

  private static Duration longer(Duration a, Duration b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}
