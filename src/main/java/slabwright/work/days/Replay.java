package slabwright.work.days;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.units.Message;

/**
 * The steps of a plan in its order once more, with one of them not before a stated time: what
 * happens when nobody plans anew. Steps before that one stay where they are, so they are placed
 * only once for all that is asked. One asker's own.
 */
final class Replay {
  private final DayPlan plan;
  private final Map<String, LocalDateTime> asked = new HashMap<>();
  private final List<WorkStep> order;
  private final JoinedSteps joined;
  private final PartialSchedule pass;

  /** How much was placed before each step of the order, as far as they are placed on time. */
  private final List<Integer> before = new ArrayList<>();

  /**
   * Of a plan's steps without the abrading that missed windows made necessary.
   *
   * @param tasks each of them in the plan
   */
  Replay(DayPlan plan, List<WorkStep> tasks) {
    this.plan = plan;
    plan.steps().stream()
        .filter(
            p ->
                p.heldBy() instanceof BindingConstraint.NotBefore
                    || p.heldBy() instanceof BindingConstraint.Window)
        .forEach(p -> asked.put(p.task().id(), p.start()));
    this.order =
        tasks.stream()
            .sorted(Comparator.comparing(t -> plan.step(t.id()).orElseThrow().start()))
            .toList();
    this.joined = JoinedSteps.of(tasks);
    this.pass =
        new PartialSchedule(plan.hours(), plan.means(), plan.firstDay(), joined, asked, Map.of());
    before.add(0);
  }

  /** Of all steps of a plan. */
  static Replay of(DayPlan plan) {
    return new Replay(
        plan, plan.steps().stream().filter(s -> !s.isAbrading()).map(ScheduledStep::task).toList());
  }

  DayPlan plan() {
    return plan;
  }

  /**
   * With a step {@code by} later than in the plan, whatever it was not to start before; one that
   * belongs to the step before is late with it.
   */
  Planned late(String asId, Duration by) {
    String id =
        plan.step(asId)
            .flatMap(s -> joined.before(s.task()))
            .filter(before -> plan.step(before).isPresent())
            .orElse(asId);
    LocalDateTime from = plan.step(id).orElseThrow().start().plus(by);
    int at = 0;
    while (!order.get(at).id().equals(id)) {
      at++;
    }
    Optional<Message> fault = onTime(at);
    if (fault.isPresent()) {
      return new Planned.Refused(fault.get());
    }
    Optional<LocalDateTime> own = Optional.ofNullable(asked.put(id, from));
    fault = place(order.subList(at, order.size()));
    own.ifPresentOrElse(t -> asked.put(id, t), () -> asked.remove(id));
    return fault.<Planned>map(Planned.Refused::new).orElseGet(() -> new Planned.Days(pass.plan()));
  }

  /** The first steps so many as in the plan, and nothing else. */
  private Optional<Message> onTime(int count) {
    int known = Math.min(count, before.size() - 1);
    pass.rollBack(before.get(known));
    // what came after is placed no longer: the next one asked may be later or earlier
    before.subList(known + 1, before.size()).clear();
    for (int i = known; i < count; i++) {
      Optional<Message> fault = pass.placeWhole(order.get(i));
      if (fault.isPresent()) {
        return fault;
      }
      before.add(pass.count());
    }
    return Optional.empty();
  }

  private Optional<Message> place(List<WorkStep> steps) {
    for (WorkStep s : steps) {
      Optional<Message> fault = pass.placeWhole(s);
      if (fault.isPresent()) {
        return fault;
      }
    }
    return Optional.empty();
  }
}
