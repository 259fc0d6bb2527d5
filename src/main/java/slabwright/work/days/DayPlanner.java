package slabwright.work.days;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.units.Message;

/**
 * Finds each step its day, so that the job ends as early as its waits, the crew and the working day
 * allow; of two plans that end alike the one with less abrading. A coat whose longest recoat time
 * would pass is either abraded first, or the coat before it is held back until the window is met.
 *
 * <p>A pass places the steps one after the other, each as early as can be; the search tries orders
 * of passes by branch and bound and stops at a fixed number of tries, so the same steps always give
 * the same plan. On jobs of few steps, whose windows follow steps done in one go as coats are, it
 * is the shortest there is; on long ones it is the best one found, never longer than the steps in
 * the order given.
 */
public final class DayPlanner {
  private DayPlanner() {}

  public static Planned plan(List<WorkStep> tasks, WorkingWeek hours, LocalDate firstDay) {
    return plan(tasks, hours, JobMeans.UNLIMITED, firstDay, Map.of());
  }

  /**
   * With the tools and masks there are, and some steps, by id, not starting before a stated time.
   */
  public static Planned plan(
      List<WorkStep> tasks,
      WorkingWeek hours,
      JobMeans means,
      LocalDate firstDay,
      Map<String, LocalDateTime> notBefore) {
    Optional<Message> fault = StepValidator.findFault(tasks, hours, means);
    if (fault.isPresent()) {
      return new Planned.Refused(fault.get());
    }
    Planned all = new ScheduleSearch(tasks, hours, means, firstDay, notBefore).best();
    return all instanceof Planned.Days d
        ? new Planned.Days(withFewer(d.plan(), tasks, notBefore))
        : all;
  }

  /** A search that stops early may find more with fewer people: none of them is a hindrance. */
  private static DayPlan withFewer(
      DayPlan plan, List<WorkStep> tasks, Map<String, LocalDateTime> notBefore) {
    DayPlan best = plan;
    for (int n = 1; n < plan.hours().people(); n++) {
      int crew = n;
      WorkingWeek few = plan.hours().withPeople(n);
      List<WorkStep> less = tasks.stream().map(t -> t.forCrew(crew)).toList();
      if (StepValidator.findFault(less, few, plan.means()).isEmpty()
          && !new ScheduleLowerBound(less, few, plan.means(), plan.firstDay(), notBefore)
              .end()
              .isAfter(best.end())) {
        best = better(best, less, few, notBefore);
      }
    }
    return best;
  }

  private static DayPlan better(
      DayPlan best, List<WorkStep> tasks, WorkingWeek few, Map<String, LocalDateTime> notBefore) {
    Planned found = new ScheduleSearch(tasks, few, best.means(), best.firstDay(), notBefore).best();
    if (found instanceof Planned.Days d && ScheduleSearch.BETTER.compare(d.plan(), best) < 0) {
      return new DayPlan(best.hours(), best.means(), best.firstDay(), d.plan().steps());
    }
    return best;
  }
}
