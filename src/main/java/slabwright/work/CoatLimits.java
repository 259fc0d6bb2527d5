package slabwright.work;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.site.Slab;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.book.Figure;
import slabwright.work.book.Laying;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.book.ShopBook;
import slabwright.work.book.TemperatureTable;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.WorkStep;
import slabwright.work.rule.DewPoint;
import slabwright.work.step.StepKind;

/**
 * Which coats the readings on the plan forbid: temperature by the product's range, surface at least
 * 3 °C over the dew point (ISO 8502-4), humidity. What was not read forbids nothing here; the rules
 * of sheet 7 ask for it.
 *
 * @param forecast whether the forecast decides instead of the readings, as outdoors
 */
record CoatLimits(
    AreaTakeoff floor, List<CoatPlan> coats, ShopBook book, UnitSystem units, boolean forecast) {
  /** The surface has to be so much warmer than the dew point, °C. */
  private static final double OVER_DEW_POINT = 3;

  List<HeldStep> held(List<WorkStep> steps) {
    List<HeldStep> held = new ArrayList<>();
    for (WorkStep s : steps) {
      s.type()
          .coat()
          .flatMap(n -> coats.stream().filter(c -> c.job().place() == n.place()).findFirst())
          .flatMap(c -> held(s, c))
          .ifPresent(held::add);
      filling(s.type().kind()).flatMap(p -> sets(s, p)).ifPresent(held::add);
    }
    return held;
  }

  private Optional<HeldStep> held(WorkStep step, CoatPlan coat) {
    Optional<HeldStep> today =
        cold(step, coat)
            .or(() -> hot(step, coat))
            .or(() -> dew(step))
            .or(() -> humid(step))
            .or(() -> unknown(step, coat.at(coat.product().drying().recoatFrom())))
            .or(() -> edge(step, coat))
            .filter(h -> !forecast);
    return today.or(() -> unknown(step, coat.coatTime()));
  }

  /** A rolled coat of which nobody knows how long its edge stays wet would show its lanes. */
  private static Optional<HeldStep> edge(WorkStep step, CoatPlan coat) {
    return coat.isRolled() ? unknown(step, coat.wetEdge()) : Optional.empty();
  }

  private Optional<Product> filling(StepKind kind) {
    return switch (kind) {
      case FILL_GAPS -> book.first(ProductKind.FILLER);
      case FILL_TRENCH -> book.first(ProductKind.LEVELLER);
      default -> Optional.empty();
    };
  }

  /** A filler or mortar of which the book does not say how it sets today. */
  private Optional<HeldStep> sets(WorkStep step, Product p) {
    return unknown(step, at(p.drying().recoatFrom(), true))
        .or(() -> unknown(step, at(p.mixing().workingTime(), false)));
  }

  /** By what was read; nothing read forbids nothing here. */
  private Figure<Duration> at(Figure<TemperatureTable> table, boolean colder) {
    OptionalDouble now = reading(colder);
    return now.isPresent()
        ? table.flatMap(t -> t.at(now.getAsDouble()))
        : Figure.known(Duration.ZERO);
  }

  private Slab slab() {
    return floor.area().slab();
  }

  /** Of slab and air what is beyond a limit further. */
  private OptionalDouble reading(boolean colder) {
    if (slab().surfaceC().isEmpty() || slab().airC().isEmpty()) {
      return slab().surfaceC().isPresent() ? slab().surfaceC() : slab().airC();
    }
    double surface = slab().surfaceC().getAsDouble();
    double air = slab().airC().getAsDouble();
    return OptionalDouble.of(colder ? Math.min(surface, air) : Math.max(surface, air));
  }

  private Optional<HeldStep> cold(WorkStep step, CoatPlan coat) {
    OptionalDouble now = reading(true);
    Laying laying = coat.product().laying();
    return laying
        .coldest()
        .maybe()
        .filter(limit -> now.isPresent() && now.getAsDouble() < limit)
        .map(
            limit ->
                hold(
                    step,
                    Message.of("work.held.cold", step.name(), text(now.getAsDouble()), text(limit)),
                    Message.of("work.held.warm-it", text(limit))));
  }

  private Optional<HeldStep> hot(WorkStep step, CoatPlan coat) {
    OptionalDouble now = reading(false);
    Laying laying = coat.product().laying();
    return laying
        .hottest()
        .maybe()
        .filter(limit -> now.isPresent() && now.getAsDouble() > limit)
        .map(
            limit ->
                hold(
                    step,
                    Message.of("work.held.hot", step.name(), text(now.getAsDouble()), text(limit)),
                    Message.of("work.held.cool-it", text(limit))));
  }

  private Optional<HeldStep> dew(WorkStep step) {
    boolean read = slab().surfaceC().isPresent() && slab().airC().isPresent();
    double humidity = slab().humidity().orElse(0);
    if (!read || humidity <= 0) {
      return Optional.empty();
    }
    double dew = DewPoint.of(slab().airC().getAsDouble(), humidity);
    double surface = slab().surfaceC().getAsDouble();
    return surface - dew >= OVER_DEW_POINT
        ? Optional.empty()
        : Optional.of(
            hold(
                step,
                Message.of("work.held.dew", step.name(), text(surface), text(dew)),
                Message.of("work.held.dry-air")));
  }

  private Optional<HeldStep> humid(WorkStep step) {
    double humidity = slab().humidity().orElse(0);
    return humidity <= DewPoint.HIGHEST_HUMIDITY
        ? Optional.empty()
        : Optional.of(
            hold(
                step,
                Message.of("work.held.humid", step.name(), humidity),
                Message.of("work.held.dry-air")));
  }

  /** The book knows the product but not so: outside its tables, or with too few hands. */
  private static Optional<HeldStep> unknown(WorkStep step, Figure<Duration> time) {
    return time instanceof Figure.Refused<Duration> refused
        ? Optional.of(
            hold(
                step,
                Message.of("work.held.not-so", step.name(), refused.why()),
                Message.of("work.held.mend-it")))
        : Optional.empty();
  }

  private static HeldStep hold(WorkStep step, Message why, Message first) {
    return new HeldStep(
        step.type().areaId(),
        step.id(),
        why,
        List.of(first, Message.of("work.held.other-day"), Message.of("work.held.other-range")));
  }

  private String text(double celsius) {
    return QuantityFormat.temperature(celsius, units);
  }
}
