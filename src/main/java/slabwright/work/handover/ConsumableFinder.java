package slabwright.work.handover;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.site.Finish;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.InlayTakeoff;
import slabwright.work.MeterWatch;
import slabwright.work.Presence;
import slabwright.work.WorkPlan;
import slabwright.work.book.ConsumablePrices;
import slabwright.work.book.Figure;
import slabwright.work.book.GritRate;
import slabwright.work.book.LayingTool;
import slabwright.work.book.ProductKind;
import slabwright.work.book.ShopTool;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.DayPlan;
import slabwright.work.days.WorkStep;
import slabwright.work.prep.PrepStep;
import slabwright.work.step.StepKind;
import slabwright.work.step.ToolKind;

/**
 * Finds what a plan uses up and takes away, each thing once for the whole job. How many sleeves,
 * brushes and pails a coat takes is common practice, no source.
 */
final class ConsumableFinder {
  private final WorkPlan plan;
  private final ConsumablePrices prices;
  private final List<Consumable> found = new ArrayList<>();

  private ConsumableFinder(WorkPlan plan) {
    this.plan = plan;
    this.prices = plan.book().consumables();
  }

  static List<Consumable> of(WorkPlan plan) {
    ConsumableFinder finder = new ConsumableFinder(plan);
    finder.ground();
    finder.masked();
    finder.laid();
    finder.protection();
    finder.takenAway();
    return List.copyOf(finder.found);
  }

  // ---- what grinding wears

  private void ground() {
    Map<String, Double> worn = new LinkedHashMap<>();
    double wheels = 0;
    for (AreaWorkPlan a : plan.areas()) {
      for (PrepStep s : a.prep().steps()) {
        double mm2 = s.machine() + s.hand();
        s.subject().grit().ifPresent(g -> worn.merge(g, mm2, Double::sum));
        wheels += s.kind() == PrepStep.Kind.LEVEL || s.kind() == PrepStep.Kind.RESIDUE ? mm2 : 0;
      }
      a.tops()
          .forEach(
              t ->
                  t.passes()
                      .forEach(
                          p ->
                              worn.merge(
                                  p.grit(), t.foot().face() + t.foot().edgeArea(), Double::sum)));
    }
    worn.forEach(this::diamonds);
    measured(
        Consumable.Kind.CUP_WHEELS,
        Message.of("work.consumable.cup-wheels"),
        squareMetres(wheels),
        Message.of("work.consumable.sheet-prep"),
        prices.cupWheel());
    measured(
        Consumable.Kind.SCREENS,
        Message.of("work.consumable.screens"),
        squareMetres(screened()),
        Message.of("work.consumable.sheet-steps"),
        prices.screens());
    bags();
  }

  /** The share of a set that is worn off, rounded up: half a set's wear is half its price. */
  private void diamonds(String grit, double mm2) {
    Optional<GritRate> rate =
        plan.book().grits().stream().filter(g -> g.name().equals(grit)).findFirst();
    if (rate.isEmpty() || mm2 <= 0) {
      return;
    }
    add(
        Consumable.Kind.DIAMONDS,
        Message.of("work.consumable.diamonds", grit),
        rate.get()
            .setLasts()
            .map(
                lasts ->
                    new CostLine.Count(
                        BigDecimal.valueOf(mm2 / lasts).setScale(2, RoundingMode.CEILING),
                        CostLine.Unit.SETS)),
        Message.of("work.consumable.sheet-prep"),
        rate.get().setPrice());
  }

  /** Floor of all coats that an abrading comes before. */
  private double screened() {
    return plan.outlook().order().maybe().stream()
        .flatMap(d -> d.steps().stream())
        .filter(s -> s.isAbrading() && s.task().type().kind() == StepKind.ABRADE)
        .mapToDouble(s -> plan.area(s.task().type().areaId()).map(a -> a.floor().net()).orElse(0.0))
        .sum();
  }

  private void bags() {
    Figure<Integer> all =
        Figure.all(plan.areas().stream().map(AreaWorkPlan::bags).toList())
            .map(l -> l.stream().mapToInt(n -> n).sum());
    if (all.maybe().filter(n -> n == 0).isPresent()) {
      return;
    }
    Figure<BigDecimal> price =
        plan.book().tools().stream()
            .filter(t -> t.is(ToolKind.VACUUM))
            .max(
                (a, b) ->
                    Double.compare(a.bagKg().maybe().orElse(0.0), b.bagKg().maybe().orElse(0.0)))
            .map(ShopTool::bagPrice)
            .orElseGet(() -> Figure.missing(Message.of("work.cost-line-builder.a-vacuum")));
    add(
        Consumable.Kind.VACUUM_BAGS,
        Message.of("work.consumable.vacuum-bags"),
        all.map(n -> CostLine.Count.whole(n, CostLine.Unit.PIECES)),
        Message.of("work.cost-line-builder.sheet-vacuum-bags"),
        price);
  }

  // ---- what is stuck down

  private void masked() {
    Map<String, Film> films = new LinkedHashMap<>();
    double paper = 0;
    double walls = 0;
    for (AreaWorkPlan a : plan.areas()) {
      for (InlayTakeoff i : a.floor().inlays()) {
        Film film = new Film(i.name(), a.name(), i.film());
        films.merge(film.key(), film, Film::and);
        paper += i.dyes().stream().mapToDouble(InlayTakeoff.StencilDye::paper).sum();
      }
      walls += a.wallMasking();
    }
    films.values().forEach(this::film);
    measured(
        Consumable.Kind.MASKING_PAPER,
        Message.of("work.consumable.masking-paper"),
        squareMetres(paper),
        Message.of("work.consumable.sheet-skirt"),
        prices.maskingPaper());
    measured(
        Consumable.Kind.WALL_MASKING,
        Message.of("work.consumable.wall-masking"),
        CostLine.Count.of(walls / 1000, CostLine.Unit.METRES),
        Message.of("work.consumable.sheet-cut-in"),
        prices.wallMasking());
  }

  /** By what comes off the roll: the waste is paid for too. */
  private void film(Film film) {
    InlayTakeoff.VinylFromRoll roll = film.film();
    add(
        Consumable.Kind.STENCIL_FILM,
        Message.of(
            "work.cost-line-builder.stencil-vinyl-off-the-roll",
            film.inlay(),
            film.area(),
            LengthFormat.show(roll.length(), plan.site().units())
                + " × "
                + LengthFormat.show(roll.roll(), plan.site().units())),
        roll.length() <= 0
            ? Figure.refused(Message.of("work.cost-line-builder.the-stencil-is-not-laid"))
            : Figure.known(squareMetres(roll.area())),
        Message.of("work.cost-line-builder.sheet-film-from-the-roll"),
        plan.book().inlay().vinylPriceArea());
  }

  /** The film of the inlays of one name on the floors of one name, off a roll of one width. */
  private record Film(String inlay, String area, InlayTakeoff.VinylFromRoll film) {
    String key() {
      return inlay + '\n' + area + '\n' + film.roll();
    }

    Film and(Film other) {
      double length = film.length() + other.film().length();
      return new Film(inlay, area, new InlayTakeoff.VinylFromRoll(length, film.roll()));
    }
  }

  // ---- what coats take

  private void laid() {
    pieces(
        Consumable.Kind.ROLLER_SLEEVES,
        Message.of("work.consumable.roller-sleeves"),
        sum(coats().filter(c -> laidBy(c, LayingTool.ROLLER)), CoatPieces::byPerson),
        prices.rollerSleeve());
    pieces(
        Consumable.Kind.BRUSHES,
        Message.of("work.consumable.brushes"),
        sum(coats().filter(c -> c.job().cutIn() > 0), CoatPieces::byPerson),
        prices.brush());
    pieces(
        Consumable.Kind.PAILS,
        Message.of("work.consumable.pails"),
        sum(coats().filter(c -> isMixed(c)), CoatPieces::batches),
        prices.pail());
    weighed(
        Consumable.Kind.GRIT_ADDITIVE,
        GritToBuy.name(plan.book()),
        GritToBuy.of(coats().filter(c -> wantsGrit(c))),
        Message.of("work.consumable.sheet-grit"),
        gritPrice());
  }

  private Figure<BigDecimal> gritPrice() {
    return plan.book()
        .first(ProductKind.GRIT_ADDITIVE)
        .map(p -> p.spread().kgPrice())
        .orElseGet(() -> Figure.missing(Message.of("work.consumable.a-grit-additive")));
  }

  /** A product that the book gives no grit for takes none. */
  private static boolean wantsGrit(CoatPlan c) {
    return c.product().spread().gritPerVolume().isKnown();
  }

  private static boolean laidBy(CoatPlan c, LayingTool tool) {
    return c.product().laying().tool().maybe().filter(t -> t == tool).isPresent();
  }

  private static boolean isMixed(CoatPlan c) {
    return c.product().mixing().twoPart().maybe().orElse(false);
  }

  /** Coats of whole floors; what a graphic takes is in its jars. */
  private Stream<CoatPlan> coats() {
    return plan.areas().stream()
        .flatMap(a -> a.coats().stream())
        .filter(c -> c.job().target() == Finish.Target.WHOLE_FLOOR);
  }

  private static Figure<Integer> sum(Stream<CoatPlan> coats, CoatPieces.Of of) {
    return Figure.all(coats.map(of::count).toList()).map(l -> l.stream().mapToInt(n -> n).sum());
  }

  private void pieces(
      Consumable.Kind kind, Message what, Figure<Integer> n, Figure<BigDecimal> price) {
    if (n.maybe().filter(x -> x == 0).isEmpty()) {
      add(
          kind,
          what,
          n.map(x -> CostLine.Count.whole(x, CostLine.Unit.PIECES)),
          Message.of("work.consumable.sheet-coats"),
          price);
    }
  }

  /** What one coat takes of things that are thrown away after it. */
  private static final class CoatPieces {
    /** What counts them. */
    interface Of {
      Figure<Integer> count(CoatPlan coat);
    }

    static Figure<Integer> byPerson(CoatPlan c) {
      return c.job().people().map(n -> n * c.job().coats());
    }

    static Figure<Integer> batches(CoatPlan c) {
      return c.batches().map(b -> b.map(x -> x.list().size()).orElse(1) * c.job().coats());
    }
  }

  // ---- people and what is taken away

  private void protection() {
    List<WorkStep> steps = plan.tasks().maybe().orElse(List.of());
    boolean vapour = steps.stream().anyMatch(s -> MeterWatch.isAskedFor(plan, s.type()));
    boolean dust = steps.stream().anyMatch(s -> s.type().kind().grindsConcrete());
    if (vapour || dust) {
      add(
          Consumable.Kind.PROTECTION,
          Message.of("work.consumable.protection"),
          plan.outlook().order().map(this::personDays),
          plan.outlook()
              .order()
              .maybe()
              .map(d -> Presence.of(d, plan.book()).daysAndPeople())
              .orElse(Message.of("work.consumable.sheet-steps")),
          prices.protection());
    }
    if (vapour) {
      add(
          Consumable.Kind.GAS_METER,
          Message.of("work.consumable.gas-meter"),
          plan.outlook()
              .order()
              .map(
                  d ->
                      CostLine.Count.whole(
                          WorkingDays.of(d, s -> MeterWatch.isAskedFor(plan, s.type())),
                          CostLine.Unit.DAYS)),
          Message.of("work.consumable.sheet-air"),
          prices.gasMeter());
    }
  }

  /** Who is there on a day has what protects that day; whoever stays away has none. */
  private CostLine.Count personDays(DayPlan days) {
    return CostLine.Count.whole(
        Presence.of(days, plan.book()).personDays(), CostLine.Unit.PERSON_DAYS);
  }

  private void takenAway() {
    Figure<Double> dust =
        Figure.all(
                plan.areas().stream()
                    .flatMap(
                        a ->
                            Stream.concat(
                                Stream.of(a.prep().dust()),
                                a.tops().stream()
                                    .filter(t -> !t.passes().isEmpty())
                                    .map(t -> t.dust())))
                    .toList())
            .map(l -> l.stream().mapToDouble(kg -> kg).sum());
    weighed(
        Consumable.Kind.DUST_DISPOSAL,
        Message.of("work.consumable.dust-disposal"),
        dust.map(kg -> CostLine.Count.of(kg, CostLine.Unit.KILOGRAMS)),
        Message.of("work.consumable.sheet-dust"),
        prices.dustDisposal());
    Figure<Double> solvent =
        Figure.all(
                plan.areas().stream()
                    .flatMap(a -> a.coats().stream())
                    .filter(c -> c.product().solvents().maybe().filter(List::isEmpty).isEmpty())
                    .map(CoatPlan::totalVolume)
                    .toList())
            .map(l -> l.stream().mapToDouble(mm3 -> mm3).sum());
    weighed(
        Consumable.Kind.SOLVENT_DISPOSAL,
        Message.of("work.consumable.solvent-disposal"),
        solvent.map(mm3 -> CostLine.Count.of(mm3 / 1e6, CostLine.Unit.LITRES)),
        Message.of("work.cost-line-builder.sheet-kits-to-buy"),
        prices.solventDisposal());
  }

  private void weighed(
      Consumable.Kind kind,
      Message what,
      Figure<CostLine.Count> count,
      Message source,
      Figure<BigDecimal> price) {
    if (count.maybe().filter(c -> c.number().signum() == 0).isEmpty()) {
      add(kind, what, count, source, price);
    }
  }

  private static CostLine.Count squareMetres(double mm2) {
    return CostLine.Count.of(mm2 / 1e6, CostLine.Unit.SQUARE_METRES);
  }

  private void measured(
      Consumable.Kind kind,
      Message what,
      CostLine.Count count,
      Message source,
      Figure<BigDecimal> price) {
    weighed(kind, what, Figure.known(count), source, price);
  }

  private void add(
      Consumable.Kind kind,
      Message what,
      Figure<CostLine.Count> count,
      Message source,
      Figure<BigDecimal> price) {
    found.add(new Consumable(kind, what, count, source, price));
  }
}
