package slabwright.work.handover;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import slabwright.work.JobTools;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopTool;
import slabwright.work.days.DayPlan;
import slabwright.work.days.JobTool;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.ToolKind;

/** Which of the shop's tools the steps of a plan hold, and which the shop has none of. */
final class ToolNeeds {
  private final WorkPlan plan;

  ToolNeeds(WorkPlan plan) {
    this.plan = plan;
  }

  /** All kinds that steps hold, abrading included; empty where the steps are not known. */
  Optional<Set<ToolKind>> kinds() {
    return plan.tasks()
        .maybe()
        .map(
            steps -> {
              Set<ToolKind> all = EnumSet.noneOf(ToolKind.class);
              steps.forEach(s -> all.addAll(s.type().tools()));
              plan.outlook().order().maybe().stream()
                  .flatMap(d -> d.steps().stream())
                  .forEach(s -> all.addAll(s.task().type().tools()));
              return all;
            });
  }

  /** The book's tools of those kinds; all of them where the steps are not known. */
  List<ShopTool> tools() {
    Optional<Set<ToolKind>> kinds = kinds();
    return plan.book().tools().stream()
        .filter(t -> kinds.isEmpty() || t.kind().maybe().filter(kinds.get()::contains).isPresent())
        .toList();
  }

  /** Those tools one by one, as many of a kind as the plan or the book says. */
  List<JobTool> pieces() {
    Optional<Set<ToolKind>> kinds = kinds();
    return JobTools.of(plan.book(), plan.site().job().crew()).stream()
        .filter(t -> kinds.isEmpty() || kinds.get().contains(t.kind()))
        .filter(t -> isInBook(t.kind()))
        .toList();
  }

  /** How many of a book's tool are on the job. */
  long count(ShopTool tool) {
    List<JobTool> pieces = pieces();
    return tool.kind().isKnown() ? JobTools.each(tool).filter(pieces::contains).count() : 1;
  }

  /** More of a kind than the shop has: from somewhere else, at a price that no book says. */
  List<JobTool> fromElsewhere() {
    List<JobTool> own =
        tools().stream().filter(t -> t.kind().isKnown()).flatMap(JobTools::each).toList();
    return pieces().stream().filter(p -> !own.contains(p)).toList();
  }

  /** Kinds that steps hold and the book has no tool of. */
  List<ToolKind> missing() {
    return kinds().orElse(Set.of()).stream().filter(k -> !isInBook(k)).toList();
  }

  private boolean isInBook(ToolKind kind) {
    return plan.book().tools().stream().anyMatch(t -> t.is(kind));
  }

  /** On how many days a tool of a kind is on site; a fan stays until the air is clear. */
  Figure<Long> days(ToolKind kind) {
    return kind == ToolKind.FAN
        ? plan.outlook().order().map(d -> blowing(d, s -> holds(s, kind)))
        : held(kind);
  }

  /**
   * The days of all pieces of a book's tool, each counted for the days on which a step holds it;
   * empty for a tool whose kind is not known.
   */
  Figure<Long> days(ShopTool tool) {
    List<JobTool> own = tool.kind().isKnown() ? JobTools.each(tool).toList() : List.of();
    return tool.kind()
        .with(
            plan.outlook().order(),
            (k, d) -> pieces().stream().filter(own::contains).mapToLong(t -> days(t, d)).sum());
  }

  private static long days(JobTool piece, DayPlan days) {
    Predicate<ScheduledStep> held = s -> s.who().tools().contains(piece);
    return piece.kind() == ToolKind.FAN
        ? blowing(days, held)
        : days.steps().stream()
            .filter(held)
            .flatMap(s -> s.spans().stream())
            .map(s -> s.start().toLocalDate())
            .distinct()
            .count();
  }

  private static boolean holds(ScheduledStep step, ToolKind kind) {
    return step.task().type().tools().contains(kind);
  }

  private static long blowing(DayPlan days, Predicate<ScheduledStep> which) {
    Set<LocalDate> on = new HashSet<>();
    days.steps().stream()
        .filter(which)
        .forEach(
            s ->
                s.start()
                    .toLocalDate()
                    .datesUntil(s.end().plus(s.task().air().fan()).toLocalDate().plusDays(1))
                    .forEach(on::add));
    return on.size();
  }

  private Figure<Long> held(ToolKind kind) {
    return plan.outlook().order().map(d -> WorkingDays.of(d, s -> s.type().tools().contains(kind)));
  }
}
