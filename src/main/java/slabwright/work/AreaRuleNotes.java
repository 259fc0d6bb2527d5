package slabwright.work;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.site.Finish;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Site;
import slabwright.site.job.JobCrew;
import slabwright.units.UnitSystem;
import slabwright.work.air.BreathingProtection;
import slabwright.work.air.Solvent;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.book.ShopBook;
import slabwright.work.book.ShopTool;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.prep.PrepPlan;
import slabwright.work.prep.PrepStep;
import slabwright.work.rule.BreathingRule;
import slabwright.work.rule.CrewSafety;
import slabwright.work.rule.DewPoint;
import slabwright.work.rule.LevelChangeRule;
import slabwright.work.rule.MoistureNotes;
import slabwright.work.rule.RuleNote;
import slabwright.work.rule.SilicaRule;
import slabwright.work.rule.SlipClass;
import slabwright.work.rule.TemperatureRule;
import slabwright.work.step.ToolKind;
import slabwright.work.top.TopPlan;

/** Every rule that applies to one floor area. */
final class AreaRuleNotes {
  private final AreaTakeoff floor;
  private final List<CoatPlan> coats;
  private final ShopBook book;
  private final UnitSystem units;
  private final JobCrew crew;
  private final List<RuleNote> notes = new ArrayList<>();

  AreaRuleNotes(Site site, AreaTakeoff floor, List<CoatPlan> coats, ShopBook book) {
    this.floor = floor;
    this.coats = coats;
    this.book = book;
    this.units = site.units();
    this.crew = site.job().crew();
  }

  /** With what is ground on the floor and its tops; each rule only where the plan has its work. */
  List<RuleNote> of(PrepPlan prep, List<TopPlan> tops, Optional<DayPlan> days) {
    boolean byHand =
        prep.steps().stream().anyMatch(s -> isGrinding(s) && s.hand() > 0)
            || tops.stream().anyMatch(t -> !t.passes().isEmpty());
    boolean byMachine = prep.steps().stream().anyMatch(s -> isGrinding(s) && s.machine() > 0);
    if (byHand || byMachine) {
      silica(byHand, byMachine, days);
      notes.addAll(CrewSafety.grinding(!floor.isOutdoors()));
    }
    vapour();
    notes.add(slip(floor).note(Optional.empty()));
    films(coats.stream().filter(AreaRuleNotes::isFilm).map(CoatPlan::product).distinct().toList());
    notes.addAll(DewPoint.notes(floor.area().slab(), units));
    floor.area().marks().forEach(this::level);
    return List.copyOf(notes);
  }

  private static boolean isGrinding(PrepStep step) {
    return step.subject().kind().grindsConcrete();
  }

  private void vapour() {
    Optional<Object> solvents =
        Solvent.said(
            coats.stream()
                .flatMap(c -> c.product().solvents().maybe().stream())
                .flatMap(List::stream)
                .map(s -> s.solvent()));
    if (solvents.isPresent()) {
      List<String> named =
          crew.persons().stream()
              .flatMap(p -> BreathingProtection.named(p.breathing()).stream())
              .map(BreathingProtection::name)
              .distinct()
              .toList();
      notes.add(BreathingRule.vapour(named, solvents.get()));
    }
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

  private void silica(boolean byHand, boolean byMachine, Optional<DayPlan> days) {
    boolean indoors = !floor.isOutdoors();
    Optional<Double> vacuum = weakestVacuum();
    for (ShopTool t : book.tools()) {
      if (byHand && t.is(ToolKind.HAND_GRINDER) && t.wheelMm().isKnown()) {
        notes.add(SilicaRule.handGrinder(t.name(), t.wheelMm().maybe().orElseThrow(), vacuum));
      }
      if (byMachine && t.is(ToolKind.FLOOR_GRINDER)) {
        notes.add(SilicaRule.floorGrinder(indoors, t.airflow().maybe()));
      }
    }
    Optional<Duration> shift = days.map(this::longestShift);
    if (byHand) {
      notes.add(SilicaRule.handHours(indoors, shift));
    }
    notes.add(
        BreathingRule.dust(
            shift.flatMap(s -> SilicaRule.respirator(indoors, s)),
            shift.isPresent() || !byHand || !indoors));
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
