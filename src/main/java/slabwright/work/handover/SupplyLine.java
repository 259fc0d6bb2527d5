package slabwright.work.handover;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.days.DayPlan;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepType;
import slabwright.work.step.ToolKind;

/**
 * Something to buy that is no product: film, paper, sleeves, grit and the like, each once for the
 * whole job and as the cost counts it.
 *
 * @param amount whole feet or metres, never less than is needed
 * @param number the same as a bare number
 * @param unit of it as a table shows it; empty where the number is not known
 * @param price of all of it, as in the cost
 * @param neededOn the first day that uses it, for film the one before; empty while the job has no
 *     dates
 */
public record SupplyLine(
    Message what,
    Figure<Message> amount,
    Figure<BigDecimal> number,
    Optional<Message> unit,
    Figure<BigDecimal> price,
    Optional<LocalDate> neededOn) {
  /** All of them, in the order of the cost. */
  public static List<SupplyLine> of(WorkPlan plan) {
    Optional<DayPlan> days = plan.days().maybe().filter(d -> plan.dated());
    return ConsumableFinder.of(plan).stream()
        .filter(c -> c.kind().isBought())
        .map(c -> of(c, plan.site().units(), days))
        .toList();
  }

  private static SupplyLine of(Consumable c, UnitSystem units, Optional<DayPlan> days) {
    Figure<CostLine.Count> told = c.count().map(n -> n.in(units).loaded());
    return new SupplyLine(
        c.what(),
        told.map(CostLine.Count::text),
        told.map(CostLine.Count::number),
        told.maybe().map(n -> n.unit().symbol()),
        CostLine.of(c.what(), c.count(), c.source(), c.price(), units).amount(),
        days.flatMap(d -> neededOn(d, c.kind())));
  }

  /** Film comes cut from the sign shop, a day before it is tried; the rest when it is used. */
  private static Optional<LocalDate> neededOn(DayPlan days, Consumable.Kind kind) {
    Optional<LocalDate> first = first(days, uses(kind));
    return kind == Consumable.Kind.STENCIL_FILM ? first.map(days::lastDayBefore) : first;
  }

  private static Optional<LocalDate> first(DayPlan days, Predicate<StepType> uses) {
    return days.steps().stream()
        .filter(s -> uses.test(s.task().type()))
        .map(s -> s.start().toLocalDate())
        .findFirst();
  }

  private static Predicate<StepType> uses(Consumable.Kind kind) {
    return switch (kind) {
      case VACUUM_BAGS, DUST_DISPOSAL -> t -> t.tools().contains(ToolKind.VACUUM);
      case SCREENS -> t -> t.kind() == StepKind.ABRADE;
      case STENCIL_FILM -> t -> t.kind() == StepKind.TACK_TEST || t.kind() == StepKind.LAY_STENCIL;
      case MASKING_PAPER -> t -> t.kind() == StepKind.LAY_PAPER;
      case WALL_MASKING -> t -> t.kind() == StepKind.MASK_WALLS;
      case ROLLER_SLEEVES, BRUSHES, PAILS, GRIT_ADDITIVE -> t -> t.kind() == StepKind.COAT;
      case DIAMONDS, CUP_WHEELS -> t -> t.kind().grindsConcrete();
      case PROTECTION, GAS_METER, SOLVENT_DISPOSAL -> t -> true;
    };
  }
}
