package slabwright.work.coat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import slabwright.work.book.Figure;
import slabwright.work.book.Kit;
import slabwright.work.book.Laying;
import slabwright.work.book.Product;
import slabwright.work.book.ProductCoverage;
import slabwright.work.book.RateArithmetic;
import slabwright.work.book.TemperatureTable;

/** Works out one product's coats; one use. */
final class CoatPlanner {
  private final CoatParameters job;
  private final Product product;
  private final ProductCoverage spread;
  private final Laying laying;

  CoatPlanner(CoatParameters job) {
    this.job = job;
    this.product = job.product();
    this.spread = product.spread();
    this.laying = product.laying();
  }

  CoatPlan plan() {
    Figure<Double> volume =
        spread.coverage().with(spread.loss(), (c, l) -> ProductAmount.volume(job.mm2(), 1, c, l));
    Figure<Optional<Batches>> batches = batches(volume);
    return new CoatPlan(
        job,
        volume,
        kits(volume, batches),
        spread.coverage().with(spread.solids(), FilmThickness::of),
        batches,
        cutIn(),
        layingTime(batches),
        lanes(batches),
        at(laying.wetEdge()),
        volume.with(spread.gritPerVolume(), (v, g) -> mixed(batches, v) * g),
        Optional.empty());
  }

  /** All that grit is stirred into: a kit that is opened whole takes it whole. */
  private static double mixed(Figure<Optional<Batches>> batches, double volume) {
    return batches.maybe().flatMap(b -> b).map(Batches::mixed).orElse(volume);
  }

  private Figure<Duration> at(Figure<TemperatureTable> table) {
    return table.flatMap(t -> job.warmer().flatMap(t::at));
  }

  /**
   * Mixed whole, each coat opens its own kits; otherwise what is left of one coat serves the next.
   */
  private Figure<Kits> kits(Figure<Double> volume, Figure<Optional<Batches>> batches) {
    boolean whole = !spread.splits().maybe().orElse(false);
    Optional<Batches> mixed = batches.maybe().flatMap(b -> b);
    if (mixed.isPresent() && whole) {
      return spread.kits().map(sold -> opened(mixed.get(), sold));
    }
    return volume.with(spread.kits(), (v, sold) -> Kits.of(v * job.coats(), sold));
  }

  private Kits opened(Batches mixed, List<Kit> sold) {
    Kit kit =
        sold.stream()
            .filter(k -> k.mm3() == mixed.kit())
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("batches are mixed from a kit sold"));
    int count = mixed.kits() * job.coats();
    return new Kits(List.of(new Kits.Line(kit, count)), mixed.used() * job.coats());
  }

  private Figure<Optional<Batches>> batches(Figure<Double> volume) {
    return product
        .mixing()
        .twoPart()
        .flatMap(two -> two ? mixed(volume) : Figure.known(Optional.empty()));
  }

  private record Times(Duration working, Duration mixing) {}

  private record Rate(double perHour, int people) {}

  private Figure<Optional<Batches>> mixed(Figure<Double> volume) {
    Figure<Times> times =
        at(product.mixing().workingTime()).with(product.mixing().mixingTime(), Times::new);
    Figure<Rate> rate = withCutIn().with(job.people(), Rate::new);
    Figure<List<Double>> sizes = spread.kits().map(l -> l.stream().map(Kit::mm3).toList());
    Figure<BatchParameters> batchJob =
        volume
            .with(sizes, Sizes::new)
            .with(spread.splits(), Split::new)
            .with(times, Timed::new)
            .with(rate, (t, r) -> batchJob(t, r));
    return batchJob
        .flatMap(BatchParameters::plan)
        .with(keptWithCutIn(), Batches::keptAt)
        .map(Optional::of);
  }

  private record Sizes(double volume, List<Double> kits) {}

  private record Split(Sizes sizes, boolean splits) {}

  private record Timed(Split split, Times times) {}

  private BatchParameters batchJob(Timed t, Rate r) {
    return new BatchParameters(
        t.split().sizes().volume(),
        t.split().sizes().kits(),
        t.split().splits(),
        t.times().working(),
        t.times().mixing(),
        product.mixing().largestBatch().maybe(),
        spread.coverage().maybe().orElseThrow(),
        spread.loss().maybe().orElseThrow(),
        r.perHour(),
        r.people());
  }

  /** What one person lays in an hour who also cuts in what they lay, mm². */
  private Figure<Double> withCutIn() {
    Figure<Double> brush = cutIn().map(t -> t.toMillis() / 3.6e6);
    return job.mm2() > 0 && brush.isKnown()
        ? job.rate().with(brush, (r, h) -> job.mm2() / (job.mm2() / r + h))
        : job.rate();
  }

  /**
   * What all at it lay in an hour, lane by lane: they cut in as they go where the edge would not
   * wait for them, or nobody knows how long it waits.
   */
  private Figure<Double> pace() {
    Figure<Double> one = isCutInAsOneGoes() ? withCutIn() : job.rate();
    return one.with(job.people(), (r, p) -> r * p);
  }

  /**
   * The pace that the plan's hours go by, mm² an hour: one cuts in, then all roll. Slower than all
   * at it at once, so that no batch is begun before its floor is reached.
   */
  private Figure<Double> keptWithCutIn() {
    Figure<Double> all = job.rate().with(job.people(), (r, p) -> r * p);
    Figure<Double> brush = cutIn().map(t -> t.toMillis() / 3.6e6);
    return job.mm2() > 0 && brush.isKnown()
        ? all.with(brush, (r, h) -> job.mm2() / (job.mm2() / r + h))
        : all;
  }

  /** The same for lanes: where all is cut in first, that time lies before the first lane. */
  private Figure<Double> kept() {
    return isCutInAsOneGoes() ? keptWithCutIn() : job.rate().with(job.people(), (r, p) -> r * p);
  }

  private boolean isCutInAsOneGoes() {
    return cutIn()
        .with(at(laying.wetEdge()), (c, wet) -> c.compareTo(wet) > 0)
        .maybe()
        .orElse(true);
  }

  private Figure<Duration> cutIn() {
    return RateArithmetic.time(job.cutIn(), laying.cutIn());
  }

  private Figure<Duration> layingTime(Figure<Optional<Batches>> batches) {
    Figure<Double> rate = job.rate().with(job.people(), (r, p) -> r * p);
    return RateArithmetic.time(job.mm2(), rate).with(batches, (t, b) -> t.plus(waits(b)));
  }

  /** The first mix, and mixing between batches when nobody is free to mix while the others roll. */
  private Duration waits(Optional<Batches> batches) {
    Duration first = product.mixing().mixingTime().maybe().orElse(Duration.ZERO);
    return batches
        .map(b -> first.plus(pause().multipliedBy(Math.max(0, b.list().size() - 1))))
        .orElse(Duration.ZERO);
  }

  private Duration pause() {
    int people = job.people().maybe().orElse(1);
    boolean somebodyFree = job.crew().maybe().filter(c -> c > people).isPresent();
    return somebodyFree
        ? Duration.ZERO
        : product.mixing().mixingTime().maybe().orElse(Duration.ZERO);
  }

  private Figure<Optional<LanePlan>> lanes(Figure<Optional<Batches>> batches) {
    if (job.grid().maybe().filter(Optional::isEmpty).isPresent()) {
      return Figure.known(Optional.empty());
    }
    return job.grid()
        .with(pace(), (g, r) -> new Rolled(g.orElseThrow(), r))
        .with(batches, this::laneJob)
        .with(kept(), (j, r) -> Optional.of(LanePlan.of(j).timed(j.withRate(r))));
  }

  private record Rolled(LaneGrid grid, double rate) {}

  private LaneParameters laneJob(Rolled r, Optional<Batches> batches) {
    double batchArea = batches.map(b -> b.list().get(0).area()).orElse(Double.POSITIVE_INFINITY);
    return new LaneParameters(r.grid(), r.rate(), batchArea, pause());
  }
}
