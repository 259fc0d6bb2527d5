package slabwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.site.AirSpace;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.work.air.AirPath;
import slabwright.work.air.AirScreening;
import slabwright.work.air.AirVolume;
import slabwright.work.air.FireCodeCheck;
import slabwright.work.air.IgnitionCheck;
import slabwright.work.air.IgnitionParameters;
import slabwright.work.air.LowestMetre;
import slabwright.work.air.Solvent;
import slabwright.work.air.SolventShare;
import slabwright.work.air.VapourStep;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.DayPlan;

/** Screens one floor area's solvent work along the day plan; one use. */
final class AirPlanner {
  /**
   * Taken when the air's temperature is not on the plan: warm, so that vapour is not understated.
   */
  private static final double TAKEN_CELSIUS = 25;

  private final AreaTakeoff floor;
  private final FloorArea area;
  private final List<CoatPlan> coats;
  private final ShopBook book;
  private final Figure<DayPlan> days;
  private final String reader;
  private final boolean unwatched;

  /**
   * Plans the air of one floor.
   *
   * @param reader who reads the gas meter, or empty
   */
  AirPlanner(
      AreaTakeoff floor, List<CoatPlan> coats, ShopBook book, Figure<DayPlan> days, String reader) {
    this.reader = reader;
    this.unwatched =
        days.maybe().filter(d -> MeterWatch.isUnwatched(d, floor.area().id())).isPresent();
    this.floor = floor;
    this.area = floor.area();
    this.coats = coats;
    this.book = book;
    this.days = days;
  }

  Figure<AirPlan> plan() {
    Figure<List<VapourStep>> steps =
        days.map(d -> StepTiming.fromDayPlan(d, area.id()))
            .maybe()
            .map(Figure::known)
            .orElseGet(() -> StepTiming.inSequence(floor, coats))
            .flatMap(laid -> new VapourStepCollector(floor, coats, book, laid).collect())
            .map(l -> l.stream().map(LaidVapour::step).toList());
    return steps.with(fire(), Released::new).flatMap(this::plan);
  }

  private record Released(List<VapourStep> steps, FireCodeCheck fire) {}

  private Figure<AirPlan> plan(Released r) {
    if (r.steps().isEmpty() || floor.isOutdoors() || floor.net() <= 0) {
      return Figure.known(airWork(Optional.empty(), r.fire()));
    }
    if (area.air().ceiling().filter(c -> c.mm() > 0).isEmpty()) {
      return Figure.refused(Message.of("work.air-planner.the-ceiling-height-of-is", area.name()));
    }
    return Figure.known(airWork(Optional.of(screening(r.steps())), r.fire()));
  }

  private AirScreening screening(List<VapourStep> steps) {
    double height = area.air().ceiling().map(Length::mm).orElseThrow();
    double airflow = area.air().airflowM3PerHour() / 60;
    return AirScreening.of(
        steps,
        AirVolume.of(floor.net(), height),
        airflow > 0 ? Optional.of(airflow) : Optional.empty(),
        Math.max(1, area.air().mixing()),
        celsius(area));
  }

  /** The temperature vapour is reckoned at: the warmer of slab and air. */
  static double celsius(FloorArea area) {
    return Math.max(area.slab().airC().orElse(TAKEN_CELSIUS), area.slab().surfaceC().orElse(-273));
  }

  /** The careful reading of a floor's air; empty when the ceiling height is not known. */
  static Optional<LowestMetre> lowestMetre(AreaTakeoff floor) {
    AirSpace air = floor.area().air();
    return air.ceiling()
        .filter(c -> c.mm() > 0 && floor.net() > 0)
        .map(
            c ->
                new LowestMetre(
                    AirVolume.of(floor.net(), c.mm()),
                    air.airflowM3PerHour() / 60,
                    Math.max(1, air.mixing()),
                    celsius(floor.area())));
  }

  private AirPlan airWork(Optional<AirScreening> screening, FireCodeCheck fire) {
    return new AirPlan(
        screening,
        assumption(),
        fire,
        IgnitionCheck.of(ignition(fire)),
        AirPath.of(openings(), outlets()),
        AirPath.ADVICE);
  }

  private IgnitionParameters ignition(FireCodeCheck fire) {
    return new IgnitionParameters(
        sources(),
        count(MarkKind.Detector.class),
        !floor.isOutdoors(),
        fire.applies(),
        solventCoats().anyMatch(c -> isInlay(c) || isSprayed(c)),
        solventCoats().anyMatch(AirPlanner::isInlay),
        solvents(),
        reader,
        unwatched);
  }

  private Stream<CoatPlan> solventCoats() {
    return coats.stream()
        .filter(c -> c.product().solvents().maybe().filter(s -> !s.isEmpty()).isPresent());
  }

  private static boolean isInlay(CoatPlan c) {
    return c.job().target() == Finish.Target.INLAY;
  }

  private static boolean isSprayed(CoatPlan c) {
    return c.product().laying().isSprayed();
  }

  private List<Solvent> solvents() {
    Stream<Product> fillers =
        floor.prep().gaps().isEmpty() ? Stream.of() : book.first(ProductKind.FILLER).stream();
    return Stream.concat(coats.stream().map(CoatPlan::product), fillers)
        .flatMap(p -> p.solvents().maybe().stream())
        .flatMap(List::stream)
        .map(SolventShare::solvent)
        .distinct()
        .toList();
  }

  private Message assumption() {
    boolean warm = area.slab().airC().isEmpty();
    Message temperature =
        Message.of(
            "work.air-planner.the-airs-temperature-is-not",
            TAKEN_CELSIUS,
            TAKEN_CELSIUS * 9 / 5.0 + 32);
    if (days.isKnown()) {
      return warm ? temperature : Message.of("work.air-planner.nothing-taken");
    }
    Message sequence = Message.of("work.air-planner.there-is-no-day-plan");
    return warm ? Message.of("work.air-planner.both-taken", temperature, sequence) : sequence;
  }

  private Figure<FireCodeCheck> fire() {
    Figure<List<Double>> volumes =
        Figure.all(
            coats.stream().map(c -> c.product().solvents().flatMap(s -> flammable(c, s))).toList());
    double largest =
        coats.stream()
            .filter(c -> c.product().solvents().maybe().filter(s -> !s.isEmpty()).isPresent())
            .mapToDouble(c -> c.job().mm2())
            .max()
            .orElse(0);
    return volumes.map(v -> FireCodeCheck.of(largest, v.stream().mapToDouble(d -> d).sum()));
  }

  private static Figure<Double> flammable(CoatPlan c, List<SolventShare> solvents) {
    return solvents.isEmpty()
        ? Figure.known(0.0)
        : c.totalVolume().map(v -> FireCodeCheck.flammable(solvents, v));
  }

  private List<String> sources() {
    List<String> names = new ArrayList<>();
    for (Mark m : area.marks()) {
      if (m.kind() instanceof MarkKind.IgnitionSource s) {
        names.add(s.what().isBlank() ? m.name() : s.what());
      }
    }
    return names;
  }

  private int count(Class<? extends MarkKind> kind) {
    return (int) area.marks().stream().filter(m -> kind.isInstance(m.kind())).count();
  }

  private List<AirPath.Place> openings() {
    return area.doorways().stream()
        .map(d -> new AirPath.Place(d.name(), WayOut.middle(area, d)))
        .toList();
  }

  private List<AirPath.Place> outlets() {
    return area.marks().stream()
        .filter(m -> m.kind() instanceof MarkKind.AirOutlet)
        .map(m -> new AirPath.Place(m.name(), m.form().spots().get(0).vec()))
        .toList();
  }
}
