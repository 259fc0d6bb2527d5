package slabwright.work;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import slabwright.work.rule.DewPoint;
import slabwright.work.rule.LevelChangeRule;
import slabwright.work.rule.MoistureNotes;
import slabwright.work.rule.RuleNote;
import slabwright.work.rule.SilicaRule;
import slabwright.work.rule.SlipClass;
import slabwright.work.rule.TemperatureRule;
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

  /** At all grinding of Table 1, for the one with most of it of those who grind here by hand. */
  private Duration longestShift(DayPlan days) {
    List<SilicaShift> here = SilicaShift.of(byHandHere(days), Set.of());
    return SilicaShift.of(days, Set.of()).stream()
        .filter(
            s -> here.stream().anyMatch(h -> h.day().equals(s.day()) && h.person() == s.person()))
        .map(SilicaShift::tasks)
        .max(Duration::compareTo)
        .orElse(Duration.ZERO);
  }

  private DayPlan byHandHere(DayPlan days) {
    List<ScheduledStep> here =
        days.steps().stream()
            .filter(s -> s.task().type().isOn(floor.area().id()))
            .filter(s -> s.task().type().isHandGrinding())
            .toList();
    return new DayPlan(days.hours(), days.means(), days.firstDay(), here);
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
