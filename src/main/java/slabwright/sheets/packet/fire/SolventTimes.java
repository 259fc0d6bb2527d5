package slabwright.sheets.packet.fire;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import slabwright.work.AreaWorkPlan;
import slabwright.work.MeterWatch;
import slabwright.work.WorkPlan;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.step.StepKind;

/**
 * When a product with solvent is laid on a floor, a day at a time: a permit and a fire watch are
 * for days and hours.
 *
 * @param from when the first of it that day begins
 * @param to when the last of it that day ends; its vapour stays until a meter reads clear
 * @param panel whether it is for a sample panel
 * @param mm3 of it that day; empty when the book does not say, and for a sample panel
 */
record SolventTimes(
    AreaWorkPlan floor,
    Product product,
    LocalDateTime from,
    LocalDateTime to,
    boolean panel,
    Optional<Double> mm3) {

  /** Of all floors in the order of time; none where the plan has no days. */
  static List<SolventTimes> of(List<SolventFloor> floors, WorkPlan plan) {
    List<SolventTimes> all = new ArrayList<>();
    Optional<DayPlan> days = plan.days().maybe();
    for (SolventFloor f : floors) {
      days.ifPresent(d -> addAll(f.work(), d, plan, all));
    }
    all.sort(Comparator.comparing(SolventTimes::from));
    return List.copyOf(all);
  }

  private static void addAll(
      AreaWorkPlan floor, DayPlan days, WorkPlan plan, List<SolventTimes> all) {
    List<ScheduledStep> steps =
        days.steps().stream().filter(s -> s.task().type().isOn(floor.id())).toList();
    for (CoatPlan coat : floor.coats()) {
      if (SolventUse.solvents(coat.product()).isEmpty()) {
        continue;
      }
      Map<LocalDate, Double> amounts = SolventUse.amounts(floor, coat, plan);
      spans(steps.stream().filter(s -> SolventUse.isOf(coat, s.task().type())).toList())
          .forEach(
              (day, t) ->
                  all.add(
                      new SolventTimes(
                          floor,
                          coat.product(),
                          t.start(),
                          t.end(),
                          false,
                          Optional.ofNullable(amounts.get(day)))));
      if (coat.product().is(ProductKind.INLAY_DYE) || coat.product().is(ProductKind.BASE_DYE)) {
        spans(
                steps.stream()
                    .filter(s -> s.task().type().kind() == StepKind.SAMPLE_PANEL)
                    .filter(s -> MeterWatch.isAskedFor(plan, s.task().type()))
                    .toList())
            .forEach(
                (day, t) ->
                    all.add(
                        new SolventTimes(
                            floor, coat.product(), t.start(), t.end(), true, Optional.empty())));
      }
    }
  }

  /** From the first to the last of each day. */
  private static Map<LocalDate, TimeSpan> spans(List<ScheduledStep> steps) {
    return steps.stream()
        .flatMap(s -> s.spans().stream())
        .collect(
            Collectors.toMap(
                t -> t.start().toLocalDate(), t -> t, SolventTimes::both, TreeMap::new));
  }

  private static TimeSpan both(TimeSpan a, TimeSpan b) {
    return new TimeSpan(
        a.start().isBefore(b.start()) ? a.start() : b.start(),
        a.end().isAfter(b.end()) ? a.end() : b.end());
  }
}
