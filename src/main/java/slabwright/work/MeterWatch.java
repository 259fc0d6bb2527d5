package slabwright.work;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import slabwright.units.Message;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.step.AirEffect;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepType;

/**
 * Who reads the gas meter while a step sets vapour free: somebody of the crew who is not in it, for
 * who sprays or rolls reads no meter, and who reads it can call for help. Common practice, no
 * source.
 *
 * @param standing whether somebody is there for it
 * @param person who, by number from 0; empty where the crew is too small
 */
public record MeterWatch(Standing standing, OptionalInt person) {
  /** Where the reader comes from. */
  public enum Standing {
    /** With no other work at that time. */
    FREE,
    /** From other work, which waits each time. */
    FROM_OTHER_WORK,
    /** Nobody: all of the crew are in the step. */
    NOBODY
  }

  /**
   * Whether a step sets vapour free; a sample panel too, where a dye has a solvent or none knows.
   */
  public static boolean isAskedFor(WorkPlan plan, StepType type) {
    return type.air() instanceof AirEffect.Vapour
        || plan.area(type.areaId()).filter(a -> isAskedFor(a, type)).isPresent();
  }

  /** The same on its floor area. */
  static boolean isAskedFor(AreaWorkPlan area, StepType type) {
    boolean panel =
        type.kind() == StepKind.SAMPLE_PANEL
            && area.coats().stream().anyMatch(AreaStepPlanner::setsVapourFree);
    return panel || type.air() instanceof AirEffect.Vapour;
  }

  /** For a step of a plan; who works that day anyway comes first, then the first letter. */
  public static MeterWatch of(DayPlan plan, ScheduledStep step) {
    List<Integer> others =
        IntStream.range(0, plan.hours().people())
            .filter(p -> !step.who().persons().contains(p))
            .boxed()
            .toList();
    IntPredicate busy = p -> isBusy(plan, step, p);
    Optional<Integer> free =
        others.stream()
            .filter(p -> !busy.test(p))
            .min(Comparator.comparing((Integer p) -> !isThere(plan, step, p)));
    if (free.isPresent()) {
      return new MeterWatch(Standing.FREE, OptionalInt.of(free.get()));
    }
    return others.isEmpty()
        ? new MeterWatch(Standing.NOBODY, OptionalInt.empty())
        : new MeterWatch(Standing.FROM_OTHER_WORK, OptionalInt.of(others.get(0)));
  }

  /** The people who read it on a floor area, by number from 0, in their order. */
  static Set<Integer> readers(DayPlan plan, String areaId) {
    Set<Integer> all = new TreeSet<>();
    plan.steps().stream()
        .filter(s -> s.task().type().isOn(areaId) && setsFree(s))
        .forEach(s -> of(plan, s).person().ifPresent(all::add));
    return all;
  }

  /** Whether a step on a floor area takes so many of the crew that nobody is left to read it. */
  static boolean isUnwatched(DayPlan plan, String areaId) {
    return plan.steps().stream()
        .filter(s -> s.task().type().isOn(areaId) && setsFree(s))
        .anyMatch(s -> of(plan, s).standing() == Standing.NOBODY);
  }

  /** Steps that take so many of the crew that nobody is left; alone is said elsewhere. */
  static List<DayCheck> tooFew(DayPlan plan) {
    return plan.steps().stream()
        .filter(s -> setsFree(s) && plan.hours().people() > 1)
        .filter(s -> of(plan, s).standing() == Standing.NOBODY)
        .map(
            s ->
                new DayCheck(
                    s.task().type().areaId(),
                    s.task().id(),
                    Message.of("work.meter-watch.nobody", s.task().name())))
        .toList();
  }

  private static boolean setsFree(ScheduledStep step) {
    return step.task().type().air() instanceof AirEffect.Vapour;
  }

  private static boolean isBusy(DayPlan plan, ScheduledStep step, int person) {
    return plan.steps().stream()
        .filter(s -> s.who().persons().contains(person))
        .flatMap(s -> s.spans().stream())
        .anyMatch(t -> step.spans().stream().anyMatch(t::meets));
  }

  private static boolean isThere(DayPlan plan, ScheduledStep step, int person) {
    Set<LocalDate> days = step.spans().stream().map(MeterWatch::day).collect(Collectors.toSet());
    return plan.steps().stream()
        .filter(s -> s.who().persons().contains(person))
        .flatMap(s -> s.spans().stream())
        .map(MeterWatch::day)
        .anyMatch(days::contains);
  }

  private static LocalDate day(TimeSpan span) {
    return span.start().toLocalDate();
  }
}
