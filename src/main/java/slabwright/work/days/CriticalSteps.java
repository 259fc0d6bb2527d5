package slabwright.work.days;

import java.time.Duration;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The steps without slack: each that makes the whole job end later, or no longer work out, when it
 * starts a quarter of an hour late. A step before a night that would have had to be waited out
 * anyway has slack, though the next one waits for it.
 */
final class CriticalSteps {
  /** What crews reckon in. */
  private static final Duration QUARTER = Duration.ofMinutes(15);

  private CriticalSteps() {}

  /** Their ids; an abrading step is one when the coat it is for is one. */
  static Set<String> of(DayPlan plan) {
    return of(Replay.of(plan));
  }

  /** As above, of a replay that is asked for more. */
  static Set<String> of(Replay replay) {
    DayPlan plan = replay.plan();
    Set<String> coats =
        plan.steps().stream()
            .filter(s -> !s.isAbrading())
            .map(s -> s.task().id())
            .filter(id -> isCritical(replay, id))
            .collect(Collectors.toSet());
    return plan.steps().stream()
        .filter(s -> coats.contains(s.isAbrading() ? s.abradesFor() : s.task().id()))
        .map(s -> s.task().id())
        .collect(Collectors.toSet());
  }

  private static boolean isCritical(Replay replay, String id) {
    LateStart.Result late = LateStart.of(replay, id, QUARTER);
    if (late instanceof LateStart.Result.Later l) {
      return l.consequence().end().compareTo(Duration.ZERO) > 0;
    }
    return true;
  }
}
