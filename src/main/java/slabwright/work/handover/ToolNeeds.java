package slabwright.work.handover;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.site.Setting;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.book.LayingTool;
import slabwright.work.book.ShopTool;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.WorkStep;
import slabwright.work.step.AirEffect;
import slabwright.work.step.StepKind;
import slabwright.work.step.ToolKind;

/** Which of the shop's tools a plan works with, and which it has none of. */
final class ToolNeeds {
  private final WorkPlan plan;

  ToolNeeds(WorkPlan plan) {
    this.plan = plan;
  }

  /**
   * What a step works with: what it holds, the sprayer of what is sprayed, a fan where vapour is.
   */
  static Set<ToolKind> of(WorkStep step, WorkPlan plan) {
    Set<ToolKind> kinds = EnumSet.noneOf(ToolKind.class);
    kinds.addAll(step.type().tools());
    if (step.type().air() instanceof AirEffect.Vapour v) {
      boolean indoors =
          plan.area(step.type().areaId())
              .filter(a -> a.floor().area().setting() == Setting.INDOOR)
              .isPresent();
      if (indoors) {
        kinds.add(ToolKind.FAN);
      }
    }
    if (step.type().kind() == StepKind.MIST_COAT || isSprayed(step, plan)) {
      kinds.add(ToolKind.SPRAYER);
    }
    return kinds;
  }

  private static boolean isSprayed(WorkStep step, WorkPlan plan) {
    if (step.type().kind() != StepKind.COAT) {
      return false;
    }
    return step.type()
        .coat()
        .flatMap(
            n ->
                plan.area(step.type().areaId()).stream()
                    .flatMap(a -> a.coats().stream())
                    .filter(c -> c.job().place() == n.place())
                    .findFirst())
        .map(CoatPlan::product)
        .flatMap(p -> p.laying().tool().maybe())
        .filter(t -> t == LayingTool.SPRAYER)
        .isPresent();
  }

  /** All kinds that steps work with; empty where the steps are not known. */
  Optional<Set<ToolKind>> kinds() {
    return plan.tasks()
        .maybe()
        .map(
            steps -> {
              Set<ToolKind> all = EnumSet.noneOf(ToolKind.class);
              steps.stream().map(s -> of(s, plan)).forEach(all::addAll);
              abradingTools().forEach(all::add);
              return all;
            });
  }

  /** What a missed recoat window asks for on top. */
  private Collection<ToolKind> abradingTools() {
    return plan.outlook().order().maybe().stream()
        .flatMap(d -> d.steps().stream())
        .flatMap(s -> s.task().type().tools().stream())
        .toList();
  }

  /** The book's tools of those kinds; all of them where the steps are not known. */
  List<ShopTool> tools() {
    Optional<Set<ToolKind>> kinds = kinds();
    return plan.book().tools().stream()
        .filter(t -> kinds.isEmpty() || t.kind().maybe().filter(kinds.get()::contains).isPresent())
        .toList();
  }

  /** Kinds that steps work with and the book has no tool of. */
  List<ToolKind> missing() {
    return kinds().orElse(Set.of()).stream()
        .filter(k -> plan.book().tools().stream().noneMatch(t -> t.is(k)))
        .toList();
  }

  /** On how many days a tool is on site. */
  Figure<Long> days(ShopTool tool) {
    return plan.outlook()
        .order()
        .map(
            d ->
                WorkingDays.of(
                    d, s -> tool.kind().maybe().filter(of(s, plan)::contains).isPresent()));
  }
}
