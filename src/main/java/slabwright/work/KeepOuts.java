package slabwright.work;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirScreening;
import slabwright.work.air.Clearing;
import slabwright.work.air.StepAir;
import slabwright.work.air.VapourStep;
import slabwright.work.days.DayPlan;
import slabwright.work.days.KeepOut;
import slabwright.work.days.Placed;
import slabwright.work.days.Task;

/** Keeps other trades off a floor while solvent is laid and until its vapour has cleared. */
final class KeepOuts {
  private KeepOuts() {}

  static Task on(Task task, List<AreaWork> areas, DayPlan days) {
    return areas.stream()
        .filter(a -> task.id().startsWith(a.id() + "/"))
        .flatMap(a -> a.air().maybe().stream())
        .flatMap(w -> w.screening().stream())
        .filter(s -> releases(s, task))
        .findFirst()
        .flatMap(s -> days.step(task.id()).map(p -> task.withKeepOut(keepOut(s, p, days))))
        .orElse(task);
  }

  private static boolean releases(AirScreening s, Task task) {
    return s.steps().stream().map(VapourStep::name).anyMatch(task.name()::equals);
  }

  /** The step's own, with the vapour held low: the longer of its two figures. */
  private static Clearing clearing(AirFigures figures, Placed step) {
    return figures.steps().stream()
        .filter(a -> a.name().equals(step.task().name()))
        .max(Comparator.comparing(StepAir::layerPeakLel))
        .map(StepAir::layerToHealth)
        .orElse(figures.toHealth());
  }

  private static KeepOut keepOut(AirScreening s, Placed step, DayPlan days) {
    Clearing clearing = clearing(s.stated().orElse(s.closed()), step);
    if (clearing instanceof Clearing.After after) {
      long minutes = (long) Math.ceil(after.minutes());
      return new KeepOut("solvent vapour", Duration.ofMinutes(minutes));
    }
    if (clearing instanceof Clearing.Never) {
      return new KeepOut(
          "solvent vapour; without fresh air it does not clear by this estimate",
          Duration.between(step.end(), days.end()));
    }
    return new KeepOut("solvent work", Duration.ZERO);
  }
}
