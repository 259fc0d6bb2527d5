package slabwright.work.days;

import java.time.Duration;
import java.util.List;
import slabwright.units.Message;

/**
 * What it does to the job when one step starts late.
 *
 * @param late the plan with the late start
 * @param end how much later the job ends
 * @param newAbrading the coats that now need an abrading step first, by name
 */
public record LateStart(DayPlan late, Duration end, List<Message> newAbrading) {
  public LateStart {
    newAbrading = List.copyOf(newAbrading);
  }

  /** What a late start gives: a consequence, or the reason why there is no plan any more. */
  public sealed interface Result {
    /** The job still works out. */
    record Later(LateStart consequence) implements Result {}

    /** It no longer does. */
    record Refused(Message sentence) implements Result {}
  }

  /**
   * The same steps in the plan's order, with step {@code id} starting {@code by} later than in
   * {@code plan}.
   *
   * @throws IllegalArgumentException when the plan has no such step
   */
  public static Result of(DayPlan plan, List<WorkStep> tasks, String id, Duration by) {
    return of(new Replay(plan, tasks), id, by);
  }

  /** As above, of steps that stand in the plan, for many steps of one plan. */
  static Result of(Replay replay, String id, Duration by) {
    DayPlan plan = replay.plan();
    if (plan.step(id).isEmpty()) {
      throw new IllegalArgumentException("no step " + id);
    }
    Planned again = replay.late(id, by);
    if (again instanceof Planned.Refused refused) {
      return new Result.Refused(refused.sentence());
    }
    DayPlan late = ((Planned.Days) again).plan();
    return new Result.Later(
        new LateStart(late, Duration.between(plan.end(), late.end()), added(plan, late)));
  }

  private static List<Message> added(DayPlan plan, DayPlan late) {
    return late.steps().stream()
        .filter(ScheduledStep::isAbrading)
        .filter(s -> plan.abradingFor(s.abradesFor()).isEmpty())
        .flatMap(s -> late.step(s.abradesFor()).stream())
        .map(c -> c.task().name())
        .toList();
  }
}
