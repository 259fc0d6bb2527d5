package slabwright.sheets.packet.fire;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slabwright.site.Finish;
import slabwright.work.AirPlan;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.air.Solvent;
import slabwright.work.air.SolventShare;
import slabwright.work.air.VapourStep;
import slabwright.work.book.Product;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.StepType;

/**
 * How much of one solvent product is laid on a floor.
 *
 * @param total of all its coats, mm³; empty when the book does not say
 * @param mostADay most of it on one day, mm³; empty without a day plan
 */
record SolventUse(Product product, Optional<Double> total, Optional<Double> mostADay) {
  /** Every product with solvent in it that the floor gets. */
  static List<SolventUse> of(AreaWorkPlan area, WorkPlan plan) {
    return area.coats().stream()
        .filter(c -> !solvents(c.product()).isEmpty())
        .map(c -> new SolventUse(c.product(), c.totalVolume().maybe(), mostADay(area, c, plan)))
        .toList();
  }

  static List<SolventShare> solvents(Product product) {
    return product.solvents().maybe().orElse(List.of());
  }

  /** The solvent with the lowest flash point: it gives the class. */
  Solvent worst() {
    return solvents(product).stream()
        .map(SolventShare::solvent)
        .min((a, b) -> Double.compare(a.flashCelsius(), b.flashCelsius()))
        .orElseThrow();
  }

  private static Optional<Double> mostADay(AreaWorkPlan area, CoatPlan coat, WorkPlan plan) {
    return amounts(area, coat, plan).values().stream().max(Double::compare);
  }

  /** How much of a coat's product is laid on which day, mm³; none without a day plan. */
  static Map<LocalDate, Double> amounts(AreaWorkPlan area, CoatPlan coat, WorkPlan plan) {
    double share = solvents(coat.product()).stream().mapToDouble(SolventShare::share).sum();
    Map<LocalDate, Double> days = new TreeMap<>();
    List<VapourStep> steps =
        area.air().maybe().flatMap(AirPlan::screening).map(s -> s.steps()).orElse(List.of());
    for (VapourStep v : steps) {
      if (isOf(coat, v.type()) && share > 0) {
        double mm3 = v.liquids().stream().mapToDouble(VapourStep.Liquid::mm3).sum() / share;
        day(v, plan).ifPresent(d -> days.merge(d, mm3, Double::sum));
      }
    }
    if (days.isEmpty()) {
      coatDays(area, coat, plan, days);
    }
    return days;
  }

  /** Whether a step lays a coat. */
  static boolean isOf(CoatPlan coat, StepType type) {
    return type.coat().filter(n -> n.place() == coat.job().place()).isPresent();
  }

  /** Outdoors no vapour is computed: the days of the coats themselves. */
  private static void coatDays(
      AreaWorkPlan area, CoatPlan coat, WorkPlan plan, Map<LocalDate, Double> days) {
    if (coat.job().target() != Finish.Target.WHOLE_FLOOR) {
      return;
    }
    plan.days()
        .maybe()
        .ifPresent(
            d ->
                d.steps().stream()
                    .filter(s -> s.task().type().isOn(area.id()))
                    .filter(s -> isOf(coat, s.task().type()))
                    .forEach(
                        s ->
                            coat.volume()
                                .maybe()
                                .ifPresent(
                                    v -> days.merge(s.start().toLocalDate(), v, Double::sum))));
  }

  private static Optional<LocalDate> day(VapourStep v, WorkPlan plan) {
    return plan.days()
        .maybe()
        .flatMap(
            d ->
                d.steps().stream()
                    .filter(s -> s.task().type().equals(v.type()))
                    .map(ScheduledStep::start)
                    .findFirst())
        .map(t -> t.toLocalDate());
  }
}
