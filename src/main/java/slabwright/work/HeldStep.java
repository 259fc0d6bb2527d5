package slabwright.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import slabwright.units.Message;
import slabwright.work.days.StepWait;
import slabwright.work.days.WorkStep;

/**
 * A step that is not done as the plan stands.
 *
 * @param area id of its floor area
 * @param step id of the step
 * @param why in one sentence
 * @param frees what would free it, any one of these; empty where it waits for another held step
 * @param freeingAir m³/min of fresh air that would free it, the mixing factor included; empty where
 *     air is not what it is held for, or where no fan is enough
 */
public record HeldStep(
    String area, String step, Message why, List<Message> frees, OptionalDouble freeingAir) {
  public HeldStep {
    frees = List.copyOf(frees);
  }

  HeldStep(String area, String step, Message why, List<Message> frees) {
    this(area, step, why, frees, OptionalDouble.empty());
  }

  /**
   * Every held step once, by its first reason, in the order of the steps; those that wait for a
   * held one included.
   *
   * @param steps each after those it waits for
   */
  static List<HeldStep> withFollowers(List<WorkStep> steps, List<AreaEntry> entries) {
    List<HeldStep> own = entries.stream().flatMap(e -> e.held().stream()).toList();
    Map<String, WorkStep> heldSteps = new LinkedHashMap<>();
    List<HeldStep> all = new ArrayList<>();
    for (WorkStep s : steps) {
      Optional<HeldStep> itself = own.stream().filter(h -> h.step().equals(s.id())).findFirst();
      Optional<HeldStep> why = itself.or(() -> follower(s, heldSteps));
      why.ifPresent(
          h -> {
            heldSteps.put(s.id(), s);
            all.add(h);
          });
    }
    return all;
  }

  private static Optional<HeldStep> follower(WorkStep s, Map<String, WorkStep> held) {
    return s.waits().stream()
        .map(StepWait::after)
        .filter(held::containsKey)
        .findFirst()
        .map(
            id ->
                new HeldStep(
                    s.type().areaId(),
                    s.id(),
                    Message.of("work.held.after", s.name(), held.get(id).name()),
                    List.of()));
  }

  static List<WorkStep> without(List<WorkStep> steps, List<HeldStep> held) {
    Set<String> ids = held.stream().map(HeldStep::step).collect(Collectors.toSet());
    return steps.stream().filter(s -> !ids.contains(s.id())).toList();
  }
}
