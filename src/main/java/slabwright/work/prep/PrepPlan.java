package slabwright.work.prep;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopBook;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepSubject;
import slabwright.work.step.ToolKind;

/**
 * How the floor is prepared, in order: trenches levelled first, then residue off, then grit by
 * grit, joints filled before the fine passes, and clean.
 *
 * @param chart what the wanted exposure is called; empty when none is wanted yet
 * @param changes where the exposure will change and what dye does there
 */
public record PrepPlan(
    List<PrepStep> steps,
    List<PrepZone> zones,
    BondAdvice bond,
    Optional<ExposureChart> chart,
    List<ExposureChange> changes,
    FillerPlan filler,
    LevellingPlan levelling) {
  public PrepPlan {
    steps = List.copyOf(steps);
    zones = List.copyOf(zones);
    changes = List.copyOf(changes);
  }

  public static PrepPlan of(PrepParameters floor, ShopBook book) {
    FillerPlan filler = FillerPlan.of(floor.gaps(), book, floor.warmer());
    List<PrepStep> steps = new PrepStepBuilder(floor, book).build();
    return new PrepPlan(
        steps,
        floor.zones(),
        BondAdvice.of(floor.mohs()),
        floor.wanted().map(ExposureChart::of),
        ExposureChange.of(floor),
        filler,
        LevellingPlan.of(floor.toLevel(), book, floor.warmer()));
  }

  /** How many fill and level at once: all but the one who mixes and carries. */
  public static int hands(ShopBook book) {
    return Math.max(1, book.crew().people().maybe().orElse(1) - 1);
  }

  /** How all filler and mortar is mixed. */
  public List<MixPlan> mixing() {
    return Stream.concat(filler.mixing().stream(), levelling.mixing().stream()).toList();
  }

  /**
   * How filler and mortar are mixed, each said once; the crew's page alone says what is unknown.
   */
  public List<Message> mixingTold(UnitSystem units) {
    return mixing().stream()
        .filter(m -> m.mixes().isKnown())
        .flatMap(m -> m.told(units).stream())
        .distinct()
        .toList();
  }

  /** How what fills a place is mixed; empty where nothing is filled there. */
  public Optional<MixPlan> mixing(StepSubject subject) {
    return subject.kind() == StepKind.FILL_GAPS
        ? filler.mixing()
        : levelling.mixing().stream()
            .filter(m -> subject.kind() == StepKind.FILL_TRENCH)
            .filter(m -> m.place().equals(subject.place()))
            .findFirst();
  }

  /** Bags for a mass of dust in kg, rounded up; no dust needs no bag. */
  public static Figure<Integer> bags(Figure<Double> dust, ShopBook book) {
    return dust.maybe().filter(kg -> kg == 0).isPresent()
        ? Figure.known(0)
        : dust.with(largestBag(book), (kg, bag) -> (int) Math.ceil(kg / bag - 1e-9));
  }

  /** What one bag of the vacuum with the largest bag holds, in kg. */
  public static Figure<Double> largestBag(ShopBook book) {
    return book.tools().stream()
        .filter(t -> t.is(ToolKind.VACUUM))
        .flatMap(t -> t.bagKg().maybe().stream())
        .filter(kg -> kg > 0)
        .max(Double::compare)
        .map(Figure::known)
        .orElseGet(() -> Figure.missing(Message.of("work.prep-plan.bag-holds-of-a-vacuum")));
  }

  private static Figure<Double> dust(List<PrepStep> steps) {
    return Figure.all(steps.stream().map(PrepStep::dust).toList())
        .map(l -> l.stream().mapToDouble(d -> d).sum());
  }

  /** Hours of the grinding passes, zone by zone. */
  public List<ZoneHours> byZone() {
    return zones.stream().map(z -> ZoneHours.of(z, steps)).toList();
  }

  /** Dust of all steps, kg. */
  public Figure<Double> dust() {
    return dust(steps);
  }

  public Figure<Duration> machineTime() {
    return time(steps.stream().map(PrepStep::machineTime).toList());
  }

  public Figure<Duration> handTime() {
    return time(steps.stream().map(PrepStep::handTime).toList());
  }

  private static Figure<Duration> time(List<Figure<Duration>> times) {
    return Figure.all(times).map(l -> l.stream().reduce(Duration.ZERO, Duration::plus));
  }
}
