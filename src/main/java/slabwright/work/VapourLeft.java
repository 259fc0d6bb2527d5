package slabwright.work;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import slabwright.work.days.DayPlan;
import slabwright.work.days.KeepOut;
import slabwright.work.days.KeepOutPeriod;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.step.ToolKind;

/**
 * Vapour that still counts when the work of a day is done: somebody reads the meter on, or the
 * floor is closed, locked and handed over to a person with a name. It counts as long as others are
 * kept off; common practice, no source.
 *
 * @param areas names of the floor areas that stay shut, those that the same air gets to included
 * @param from when the day's last work ends, as the crew is told it
 * @param until when others may come back
 * @param present whether the crew still cleans up then, so that nobody has to take over
 * @param fan whether a fan has to run on
 * @param reader who of the crew read the meter last, by number from 0; empty where it is too small
 */
public record VapourLeft(
    List<String> areas,
    LocalDateTime from,
    LocalDateTime until,
    boolean present,
    boolean fan,
    OptionalInt reader) {
  public VapourLeft {
    areas = List.copyOf(areas);
  }

  /** On each working day with any, in order; none where the plan has no days. */
  public static List<VapourLeft> of(WorkPlan plan) {
    Duration cleanUp = plan.book().setUp().cleanUp().maybe().orElse(Duration.ZERO);
    return plan.days().maybe().stream().flatMap(d -> of(d, cleanUp)).toList();
  }

  private static Stream<VapourLeft> of(DayPlan plan, Duration cleanUp) {
    return plan.steps().stream()
        .flatMap(s -> s.spans().stream())
        .map(t -> t.start().toLocalDate())
        .distinct()
        .sorted()
        .flatMap(day -> on(day, plan, cleanUp));
  }

  private static Stream<VapourLeft> on(LocalDate day, DayPlan plan, Duration cleanUp) {
    LocalDateTime from =
        plan.steps().stream()
            .flatMap(s -> s.spans().stream())
            .filter(t -> t.start().toLocalDate().equals(day))
            .map(TimeSpan::toldAsWork)
            .map(TimeSpan::end)
            .max(Comparator.naturalOrder())
            .orElseThrow();
    List<ScheduledStep> out =
        plan.steps().stream()
            .filter(s -> !s.end().toLocalDate().isAfter(day))
            .filter(s -> KeepOutPeriod.until(s).filter(from::isBefore).isPresent())
            .sorted(Comparator.comparing(ScheduledStep::end))
            .toList();
    if (out.isEmpty()) {
      return Stream.empty();
    }
    LocalDateTime until =
        out.stream()
            .flatMap(s -> KeepOutPeriod.until(s).stream())
            .max(Comparator.naturalOrder())
            .orElseThrow();
    return Stream.of(
        new VapourLeft(
            areas(out),
            from,
            until,
            !until.isAfter(from.plus(cleanUp)),
            out.stream().anyMatch(s -> s.task().type().tools().contains(ToolKind.FAN)),
            MeterWatch.of(plan, out.get(out.size() - 1)).person()));
  }

  private static List<String> areas(List<ScheduledStep> steps) {
    List<String> all = new ArrayList<>();
    for (ScheduledStep s : steps) {
      all.add(s.task().area());
      s.task().keepOut().stream()
          .flatMap(k -> k.beside().stream())
          .map(KeepOut.Beside::area)
          .forEach(all::add);
    }
    return all.stream().distinct().toList();
  }
}
