package slabwright.work.coat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;
import slabwright.work.book.RateArithmetic;
import slabwright.work.book.TemperatureTable;

/**
 * One product's coats on one floor.
 *
 * @param job what was asked
 * @param volume mm³ for one coat
 * @param kits to buy for all coats
 * @param film of one coat
 * @param batches of one coat; known and empty for a product that is not mixed in batches
 * @param cutIn time of one person to cut in, before each coat
 * @param laying time to lay one coat with the product's people, waits for batches included
 * @param lanes for a rolled coat; known and empty for others
 * @param wetEdge how long an edge stays wet at the day's temperature
 * @param grit kg of grit additive in the last coat, in all that is mixed for it
 * @param divided its sections, when it is not laid in one go; then times are of all sections one
 *     after the other, and lanes and batches go on from one to the next
 */
public record CoatPlan(
    CoatParameters job,
    Figure<Double> volume,
    Figure<Kits> kits,
    Figure<FilmThickness> film,
    Figure<Optional<Batches>> batches,
    Figure<Duration> cutIn,
    Figure<Duration> laying,
    Figure<Optional<LanePlan>> lanes,
    Figure<Duration> wetEdge,
    Figure<Double> grit,
    Optional<DividedCoat> divided) {

  public static CoatPlan of(CoatParameters job) {
    return new CoatPlanner(job).plan();
  }

  /** The same coat in sections. */
  CoatPlan divided(DividedCoat how) {
    List<CoatPlan> parts = how.sections().stream().map(DividedCoat.Section::plan).toList();
    boolean opened = mixed().isPresent() && !product().spread().splits().maybe().orElse(false);
    return new CoatPlan(
        job,
        volume,
        opened ? DividedCoat.kits(how.sections(), product().spread().kits()) : kits,
        film,
        Figure.all(parts.stream().map(CoatPlan::batches).toList()).map(Batches::joined),
        sum(parts.stream().map(CoatPlan::cutIn).toList()),
        sum(parts.stream().map(CoatPlan::laying).toList()),
        Figure.all(parts.stream().map(CoatPlan::lanes).toList()).map(LanePlan::joined),
        wetEdge,
        Figure.all(parts.stream().map(CoatPlan::grit).toList())
            .map(all -> all.stream().mapToDouble(kg -> kg).sum()),
        Optional.of(how));
  }

  private static Figure<Duration> sum(List<Figure<Duration>> times) {
    return Figure.all(times).map(l -> l.stream().reduce(Duration.ZERO, Duration::plus));
  }

  /** Whether it is laid lane by lane. */
  public boolean isRolled() {
    return job.grid().maybe().flatMap(g -> g).isPresent();
  }

  public Product product() {
    return job.product();
  }

  /** The id of a coat's step within its floor area; coats count from 1. */
  public String stepId(int coat) {
    return "coat." + job.place() + "." + job.product().id() + "." + coat;
  }

  /** The id of one section's step; the last section ends the coat and has its name. */
  public String stepId(int coat, DividedCoat.Section section) {
    boolean last = section.number() == divided.orElseThrow().sections().size();
    return stepId(coat) + (last ? "" : ".section." + section.number());
  }

  /** All coats together, mm³. */
  public Figure<Double> totalVolume() {
    return volume.map(v -> v * job.coats());
  }

  /** What one batch does, or empty when the product is not mixed in batches. */
  public Optional<Batches> mixed() {
    return batches.maybe().flatMap(b -> b);
  }

  /** Each batch along the lanes; empty without either. */
  public List<BatchLanes> batchLanes() {
    Optional<LanePlan> plan = lanes.maybe().flatMap(l -> l);
    return plan.isEmpty() || mixed().isEmpty()
        ? List.of()
        : BatchLanes.of(mixed().get(), plan.get());
  }

  /** Those of one section, by the numbers of the whole coat; times from the section's own start. */
  public List<BatchLanes> batchLanes(DividedCoat.Section section) {
    List<BatchLanes> all = batchLanes();
    int before =
        divided.orElseThrow().sections().stream()
            .filter(s -> s.number() < section.number())
            .mapToInt(DividedCoat.Section::batches)
            .sum();
    List<BatchLanes> own =
        all.subList(Math.min(before, all.size()), Math.min(before + section.batches(), all.size()));
    return own.stream().map(b -> b.from(own.get(0).begins())).toList();
  }

  /**
   * Whether a batch outlasts its working time at the plan's pace, though not where all who lay cut
   * in and roll at once.
   */
  public boolean isLaidLate(Batches.Batch batch) {
    return workingTime()
        .with(product().mixing().mixingTime(), Duration::minus)
        .maybe()
        .filter(left -> batch.kept().compareTo(left) > 0)
        .isPresent();
  }

  /** Whether the edges stay wet in the lanes laid out. */
  public Figure<Boolean> keepsWetEdge() {
    return lanes.with(
        wetEdge, (l, wet) -> l.map(plan -> plan.worstEdge().compareTo(wet) <= 0).orElse(true));
  }

  /**
   * Whether cutting in all round first would dry before the roller comes: cut in as you go then.
   */
  public Figure<Boolean> cutInOutlastsWetEdge() {
    return cutIn.with(wetEdge, (cut, wet) -> cut.compareTo(wet) > 0);
  }

  /** One coat from the first brush to the last lane. */
  public Figure<Duration> coatTime() {
    return cutIn.with(laying, Duration::plus);
  }

  /** The brush and roller work of one coat, without regard to batches. */
  public Figure<Duration> workTime() {
    Figure<Double> rate = job.rate().with(job.people(), (r, p) -> r * p);
    return cutIn.with(RateArithmetic.time(job.mm2(), rate), Duration::plus);
  }

  /** How long something takes to dry or to bear: at the colder of slab and air. */
  public Figure<Duration> at(Figure<TemperatureTable> table) {
    return table.flatMap(t -> job.colder().flatMap(t::at));
  }

  /** How long a mixed batch can be laid: at the warmer of slab and air. */
  public Figure<Duration> workingTime() {
    return product().mixing().workingTime().flatMap(t -> job.warmer().flatMap(t::at));
  }
}
