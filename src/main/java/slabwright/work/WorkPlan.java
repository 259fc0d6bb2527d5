package slabwright.work;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopBook;
import slabwright.work.days.DayPlan;
import slabwright.work.days.DayTable;
import slabwright.work.days.LateStart;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.WorkStep;

/**
 * All work on a site, indoor and outdoor side by side: a value, a pure function of what goes in.
 *
 * @param dated whether the site has a start date; without one the days count from a Monday
 * @param tasks every step before it has a place in time
 * @param days when each step happens that can be done; refused where the job can't start
 * @param outlook what of it can be done, and what stands against the rest
 */
@RecordBuilder
public record WorkPlan(
    Site site,
    ShopBook book,
    boolean dated,
    List<AreaWorkPlan> areas,
    Figure<List<WorkStep>> tasks,
    Figure<DayPlan> days,
    JobOutlook outlook)
    implements WorkPlanBuilder.With {
  /** Stands on every sheet with figures from here. */
  public static final Message NOTICE =
      Message.of("work.work-plan.screening-estimates-for-planning");

  public WorkPlan {
    areas = List.copyOf(areas);
  }

  /** Plans the work of all floor areas. */
  public static WorkPlan of(Site site, List<AreaTakeoff> floors, ShopBook book) {
    return new WorkPlanner(site, floors, book).plan();
  }

  /**
   * What it does to the job when one step starts late.
   *
   * @throws IllegalArgumentException when the day plan has no such step
   */
  public Figure<LateStart.Result> lateStart(String stepId, Duration by) {
    return tasks.with(days, (t, d) -> LateStart.of(d, t, stepId, by));
  }

  /** The days line by line, with what a late start does; worked out anew at each call. */
  public Figure<DayTable> table() {
    return days.map(DayTable::of);
  }

  /** Hours of steps and of presence; refused where there are no dates. */
  public Figure<Presence> presence() {
    return days.map(d -> Presence.of(d, book));
  }

  /** Names of the floor areas that are left with a fresh coat: nobody packs up over them. */
  public List<String> coatedLast() {
    return closing().stream().map(WorkStep::area).toList();
  }

  /** The coats that close those floor areas: before them tools and waste are out. */
  public List<WorkStep> closing() {
    return days.maybe()
        .or(() -> outlook.order().maybe())
        .map(d -> JobFrame.closing(d.steps().stream().map(ScheduledStep::task).toList()))
        .orElse(List.of());
  }

  public Optional<AreaWorkPlan> area(String id) {
    return areas.stream().filter(a -> a.id().equals(id)).findFirst();
  }
}
