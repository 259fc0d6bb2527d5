package slabwright.work;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.site.Finish;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.units.UnitSystem;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.book.ShopBook;
import slabwright.work.book.ShopTool;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.rule.DewPoint;
import slabwright.work.rule.LevelChangeRule;
import slabwright.work.rule.MoistureNotes;
import slabwright.work.rule.RuleNote;
import slabwright.work.rule.SilicaRule;
import slabwright.work.rule.SlipClass;
import slabwright.work.rule.TemperatureRule;
import slabwright.work.step.StepType;
import slabwright.work.step.ToolKind;

/** Every rule that applies to one floor area. */
final class AreaRuleNotes {
  private final AreaTakeoff floor;
  private final ShopBook book;
  private final UnitSystem units;
  private final List<RuleNote> notes = new ArrayList<>();

  private AreaRuleNotes(AreaTakeoff floor, ShopBook book, UnitSystem units) {
    this.floor = floor;
    this.book = book;
    this.units = units;
  }

  static List<RuleNote> of(
      AreaTakeoff floor,
      List<CoatPlan> coats,
      Optional<DayPlan> days,
      ShopBook book,
      UnitSystem units) {
    AreaRuleNotes a = new AreaRuleNotes(floor, book, units);
    a.silica(days);
    a.notes.add(slip(floor).note(Optional.empty()));
    a.films(
        coats.stream().filter(AreaRuleNotes::isFilm).map(CoatPlan::product).distinct().toList());
    a.notes.addAll(DewPoint.notes(floor.area().slab(), units));
    floor.area().marks().forEach(a::level);
    return List.copyOf(a.notes);
  }

  private static boolean isFilm(CoatPlan c) {
    Product p = c.product();
    return c.job().target() == Finish.Target.WHOLE_FLOOR
        && !p.is(ProductKind.BASE_DYE)
        && !p.is(ProductKind.CLEANER);
  }

  private void films(List<Product> products) {
    notes.addAll(
        MoistureNotes.of(
            floor.area().slab(), floor.area().setting(), floor.net(), products, units));
    products.forEach(
        p ->
            notes.addAll(
                TemperatureRule.of(floor.area().slab(), floor.area().setting(), p, units)));
  }

  private void silica(Optional<DayPlan> days) {
    boolean indoors = !floor.isOutdoors();
    Optional<Double> vacuum = weakestVacuum();
    for (ShopTool t : book.tools()) {
      if (t.is(ToolKind.HAND_GRINDER) && t.wheelMm().isKnown()) {
        notes.add(SilicaRule.handGrinder(t.name(), t.wheelMm().maybe().orElseThrow(), vacuum));
      }
      if (t.is(ToolKind.FLOOR_GRINDER)) {
        notes.add(SilicaRule.floorGrinder(indoors, t.airflow().maybe()));
      }
    }
    notes.add(SilicaRule.handHours(indoors, days.map(this::longestShift)));
  }

  /** The vacuum on a hand grinder: the weakest the shop has, so that none is overlooked. */
  private Optional<Double> weakestVacuum() {
    return book.tools().stream()
        .filter(t -> t.is(ToolKind.VACUUM))
        .flatMap(t -> t.airflow().maybe().stream())
        .min(Double::compare);
  }

  /** Hand grinding here on the day with most of it. */
  private Duration longestShift(DayPlan days) {
    Map<LocalDate, Duration> byDay = new HashMap<>();
    for (ScheduledStep p : days.steps()) {
      StepType type = p.task().type();
      if (type.isOn(floor.area().id()) && type.isHandGrinding()) {
        for (TimeSpan s : p.spans()) {
          byDay.merge(s.start().toLocalDate(), s.length(), Duration::plus);
        }
      }
    }
    return byDay.values().stream().max(Duration::compareTo).orElse(Duration.ZERO);
  }

  /**
   * An indoor floor with a way in is taken as an entrance, the stricter class; so is one of which
   * nobody said that it stays dry.
   */
  static SlipClass slip(AreaTakeoff floor) {
    boolean entrance = floor.area().doorways().stream().anyMatch(d -> d.wayIn());
    return SlipClass.of(floor.isOutdoors(), entrance, floor.area().use().wet().orElse(true), false);
  }

  private void level(Mark m) {
    if (m.kind() instanceof MarkKind.LevelChange c) {
      notes.add(LevelChangeRule.note(m.name(), c.height().mm()));
    }
  }
}
