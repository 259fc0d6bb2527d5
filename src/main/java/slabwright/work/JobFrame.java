package slabwright.work;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopBook;
import slabwright.work.days.StepWait;
import slabwright.work.days.WorkStep;
import slabwright.work.step.StepKind;

/**
 * What the whole crew does before and after all steps: unloading and striking. Nothing for what the
 * book does not say; {@link Presence} names it.
 */
record JobFrame(ShopBook book) {
  private static final String SET_UP = "job/set-up";
  private static final String STRIKE = "job/strike";

  List<WorkStep> around(List<WorkStep> steps) {
    if (steps.isEmpty()) {
      return steps;
    }
    List<WorkStep> all = new ArrayList<>();
    Optional<WorkStep> first =
        step(
            SET_UP,
            Message.of("work.job-frame.set-up"),
            StepKind.SET_UP,
            book.setUp().unloading(),
            List.of());
    first.ifPresent(all::add);
    List<StepWait> begun = first.stream().map(s -> StepWait.straightAfter(s.id())).toList();
    steps.forEach(s -> all.add(s.waits().isEmpty() ? s.in(s.air(), begun) : s));
    Set<String> followed =
        steps.stream()
            .flatMap(s -> s.waits().stream())
            .map(StepWait::after)
            .collect(Collectors.toSet());
    List<StepWait> last =
        steps.stream()
            .filter(s -> !followed.contains(s.id()))
            .map(s -> StepWait.straightAfter(s.id()))
            .toList();
    List<String> wet = coatedLast(steps);
    Message strike =
        wet.isEmpty()
            ? Message.of("work.job-frame.strike")
            : Message.of("work.job-frame.strike-outside", String.join(", ", wet));
    step(STRIKE, strike, StepKind.STRIKE, book.setUp().strike(), last).ifPresent(all::add);
    return all;
  }

  /** Names of the floor areas whose last step is a coat: there is no way over them to pack up. */
  static List<String> coatedLast(List<WorkStep> steps) {
    return closing(steps).stream().map(WorkStep::area).toList();
  }

  /** The last steps of those floor areas. */
  static List<WorkStep> closing(List<WorkStep> steps) {
    Map<String, WorkStep> last = new LinkedHashMap<>();
    steps.stream()
        .filter(s -> !s.type().kind().isWholeCrew())
        .forEach(s -> last.put(s.type().areaId(), s));
    return last.values().stream().filter(s -> s.type().kind() == StepKind.COAT).toList();
  }

  private Optional<WorkStep> step(
      String id, Message name, StepKind kind, Figure<Duration> time, List<StepWait> waits) {
    int people = book.crew().people().maybe().orElse(1);
    return time.maybe()
        .filter(t -> !t.isZero())
        .map(
            t ->
                new WorkStep(
                    id,
                    name,
                    "",
                    StepTypes.job(kind),
                    t,
                    people,
                    true,
                    waits,
                    Optional.empty(),
                    Optional.empty()));
  }
}
