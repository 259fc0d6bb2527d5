package slabwright.work;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.work.days.JobTool;
import slabwright.work.step.ToolKind;

/**
 * That the fans of a job move less than the plan of its air reckons with.
 *
 * @param asked m³/min
 * @param moved m³/min, by all fans of the job together
 * @param more how many more like the weakest of them it takes
 */
public record FanShortage(double asked, double moved, int more) {
  /** Of the floor area that asks for most; empty where its air is moved, or not known. */
  public static Optional<FanShortage> of(WorkPlan plan) {
    return plan.areas().stream()
        .flatMap(a -> of(a, plan).stream())
        .max(Comparator.comparingDouble(FanShortage::asked));
  }

  /** Of one floor area. */
  public static Optional<FanShortage> of(AreaWorkPlan area, WorkPlan plan) {
    return area.air().maybe().flatMap(AirPlan::screening).flatMap(s -> s.stated()).stream()
        .flatMap(s -> of(s.airflow(), plan).stream())
        .findFirst();
  }

  private static Optional<FanShortage> of(double asked, WorkPlan plan) {
    OptionalDouble moved = JobTools.fansBelow(asked, plan);
    List<JobTool> fans =
        JobTools.of(plan.book(), plan.site().job().crew()).stream()
            .filter(t -> t.kind() == ToolKind.FAN)
            .toList();
    if (moved.isEmpty()) {
      return Optional.empty();
    }
    double each = fans.stream().mapToDouble(f -> f.airflow().orElseThrow()).min().orElseThrow();
    int more = (int) Math.ceil((asked - moved.getAsDouble()) / each);
    return Optional.of(new FanShortage(asked, moved.getAsDouble(), more));
  }
}
