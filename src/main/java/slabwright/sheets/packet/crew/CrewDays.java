package slabwright.sheets.packet.crew;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slabwright.sheets.packet.MeterLines;
import slabwright.work.ClosedAir;
import slabwright.work.Presence;
import slabwright.work.VapourLeft;
import slabwright.work.WorkPlan;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepType;

/** Cuts a day plan into the days that a crew works. */
final class CrewDays {
  private CrewDays() {}

  /** The days of the plan; of the order of the steps where the job can't start. */
  static List<CrewDay> of(WorkPlan plan) {
    return days(plan)
        .map(d -> plan.outlook().canStart() ? of(d, plan) : inOrder(d))
        .orElse(List.of());
  }

  /** What the pages go by: the day plan, or the order of the steps without its dates. */
  static Optional<DayPlan> days(WorkPlan plan) {
    return MeterLines.dayPlan(plan);
  }

  /** All steps as one: on which day any of them falls is not known. */
  private static List<CrewDay> inOrder(DayPlan plan) {
    List<CrewDay.Part> parts =
        plan.steps().stream()
            .map(
                s ->
                    new CrewDay.Part(
                        s, new TimeSpan(s.start(), s.end()), Optional.empty(), Optional.empty()))
            .toList();
    return parts.isEmpty() ? List.of() : List.of(day(1, plan.firstDay(), parts, List.of()));
  }

  private static List<CrewDay> of(DayPlan plan, WorkPlan work) {
    List<VapourLeft> left = VapourLeft.of(work);
    List<Presence.Day> present = Presence.of(plan, work.book()).days();
    Map<LocalDate, List<CrewDay.Part>> byDay = new TreeMap<>();
    for (ScheduledStep s : plan.steps()) {
      List<TimeSpan> spans = s.spans();
      for (int i = 0; i < spans.size(); i++) {
        byDay
            .computeIfAbsent(spans.get(i).start().toLocalDate(), d -> new ArrayList<>())
            .add(new CrewDay.Part(s, spans.get(i), end(spans, i - 1), start(spans, i + 1)));
      }
    }
    List<CrewDay> days = new ArrayList<>();
    byDay.forEach(
        (day, parts) -> {
          List<CrewDay.Entry> out = new ArrayList<>(closed(day, work.outlook().closed()));
          left.stream()
              .filter(l -> l.from().toLocalDate().equals(day))
              .forEach(l -> out.add(new CrewDay.Left(l, new TimeSpan(l.from(), l.until()))));
          opening(day, parts, present).ifPresent(out::add);
          days.add(day(days.size() + 1, day, parts, out));
        });
    return days;
  }

  /** From when the crew is paid for the day until the working day begins. */
  private static Optional<CrewDay.Opening> opening(
      LocalDate day, List<CrewDay.Part> parts, List<Presence.Day> present) {
    LocalDateTime first =
        parts.stream().map(p -> p.span().start()).min(Comparator.naturalOrder()).orElseThrow();
    return present.stream()
        .filter(p -> p.span().start().toLocalDate().equals(day))
        .filter(p -> p.span().start().isBefore(first))
        .findFirst()
        .map(p -> new CrewDay.Opening(new TimeSpan(p.span().start(), first), p.persons()));
  }

  private static Optional<LocalDateTime> end(List<TimeSpan> spans, int i) {
    return i >= 0 ? Optional.of(spans.get(i).end()) : Optional.empty();
  }

  private static Optional<LocalDateTime> start(List<TimeSpan> spans, int i) {
    return i < spans.size() ? Optional.of(spans.get(i).start()) : Optional.empty();
  }

  private static CrewDay day(
      int number, LocalDate on, List<CrewDay.Part> parts, List<CrewDay.Entry> out) {
    List<CrewDay.Part> order = new ArrayList<>(parts);
    order.sort(Comparator.comparing((CrewDay.Part p) -> p.span().start()));
    List<CrewDay.Entry> entries = new ArrayList<>();
    List<List<CrewDay.Part>> rows = new ArrayList<>();
    for (CrewDay.Part p : order) {
      rows.stream()
          .filter(r -> isOneJob(r.get(r.size() - 1), p))
          .findFirst()
          .ifPresentOrElse(r -> r.add(p), () -> rows.add(new ArrayList<>(List.of(p))));
    }
    rows.forEach(r -> entries.add(new CrewDay.Work(r)));
    entries.addAll(out);
    entries.sort(Comparator.comparing((CrewDay.Entry e) -> e.span().start()));
    return new CrewDay(number, on, entries);
  }

  /** Lay, press and paper of one stencil are told in one sentence, and so are its mist coats. */
  private static boolean isOneJob(CrewDay.Part before, CrewDay.Part next) {
    StepType a = before.step().task().type();
    StepType b = next.step().task().type();
    boolean same =
        a.isOn(b.areaId())
            && a.subject().place().equals(b.subject().place())
            && a.stencils().equals(b.stencils())
            && !a.stencils().isEmpty();
    return same
        && ((isLaying(a.kind()) && isLaying(b.kind()))
            || (a.kind() == StepKind.MIST_COAT && b.kind() == StepKind.MIST_COAT));
  }

  static boolean isLaying(StepKind kind) {
    return kind == StepKind.LAY_STENCIL
        || kind == StepKind.PRESS_EDGES
        || kind == StepKind.LAY_PAPER;
  }

  /** When people are out on a day, of one floor area in one row where the times touch. */
  private static List<CrewDay.Closed> closed(LocalDate on, List<ClosedAir> all) {
    List<CrewDay.Closed> rows = new ArrayList<>();
    for (ClosedAir c : all) {
      c.span()
          .filter(s -> s.start().toLocalDate().equals(on))
          .ifPresent(s -> add(rows, new CrewDay.Closed(c, s)));
    }
    return rows;
  }

  private static void add(List<CrewDay.Closed> rows, CrewDay.Closed next) {
    for (int i = 0; i < rows.size(); i++) {
      CrewDay.Closed r = rows.get(i);
      boolean touch =
          r.air().area().equals(next.air().area())
              && r.air().limit().equals(next.air().limit())
              && !next.span().start().isAfter(r.span().end());
      if (touch) {
        TimeSpan both =
            new TimeSpan(
                r.span().start(),
                r.span().end().isAfter(next.span().end()) ? r.span().end() : next.span().end());
        rows.set(i, new CrewDay.Closed(next.air(), both));
        return;
      }
    }
    rows.add(next);
  }
}
