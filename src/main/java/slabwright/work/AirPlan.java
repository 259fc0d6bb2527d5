package slabwright.work;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirPath;
import slabwright.work.air.AirScreening;
import slabwright.work.air.ClearingTime;
import slabwright.work.air.FireCodeCheck;
import slabwright.work.air.IgnitionCheck;
import slabwright.work.air.StepAirFigures;
import slabwright.work.air.VapourStep;
import slabwright.work.days.DayPlan;
import slabwright.work.days.KeepOut;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.WorkStep;

/**
 * Air, fire and ignition for one floor area.
 *
 * @param screening empty outdoors and where no solvent is used
 * @param assumption what was taken because the plan does not say; may be an empty sentence
 * @param path where air comes in and goes out, if the plan has two openings
 */
public record AirPlan(
    Optional<AirScreening> screening,
    Message assumption,
    FireCodeCheck fire,
    IgnitionCheck ignition,
    Optional<AirPath> path,
    List<Message> advice) {
  public AirPlan {
    advice = List.copyOf(advice);
  }

  /**
   * A step that keeps others off the floor while solvent is laid and until its vapour has cleared.
   */
  static WorkStep keepingOut(WorkStep task, List<AreaWorkPlan> areas, DayPlan days) {
    return areas.stream()
        .filter(a -> task.type().isOn(a.id()))
        .flatMap(a -> a.air().maybe().stream())
        .flatMap(w -> w.screening().stream())
        .filter(s -> releases(s, task))
        .findFirst()
        .flatMap(s -> days.step(task.id()).map(p -> task.withKeepOut(keepOut(s, p, days))))
        .orElse(task);
  }

  private static boolean releases(AirScreening s, WorkStep task) {
    return s.steps().stream().map(VapourStep::type).anyMatch(task.type()::equals);
  }

  /** The step's own, with the vapour held low: the longer of its two figures. */
  private static ClearingTime clearing(AirFigures figures, ScheduledStep step) {
    return figures.steps().stream()
        .filter(a -> a.type().equals(step.task().type()))
        .findFirst()
        .map(StepAirFigures::layerToHealth)
        .orElse(figures.toHealth());
  }

  private static KeepOut keepOut(AirScreening s, ScheduledStep step, DayPlan days) {
    ClearingTime clearing = clearing(s.stated().orElse(s.closed()), step);
    if (clearing instanceof ClearingTime.After after) {
      long minutes = (long) Math.ceil(after.minutes());
      return new KeepOut(
          Message.of("work.keep-out-op.solvent-vapour"), Duration.ofMinutes(minutes));
    }
    if (clearing instanceof ClearingTime.Never) {
      return new KeepOut(
          Message.of("work.keep-out-op.solvent-vapour-without-fresh"),
          Duration.between(step.end(), days.end()));
    }
    return new KeepOut(Message.of("work.keep-out-op.solvent-work"), Duration.ZERO);
  }
}
