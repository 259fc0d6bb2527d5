package slabwright.work.prep;

import java.time.Duration;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.DoubleStream;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;
import slabwright.work.coat.Kits;
import slabwright.work.step.StepPlace;

/**
 * How a filler or a mortar is mixed: in batches no larger than what those who fill use up before it
 * sets, at the warmer of slab and air.
 *
 * @param place what is filled
 * @param workingTime from the start of mixing
 * @param nozzle whether each kit is a cartridge that mixes in its nozzle; then the working time
 *     bounds no batch, but every stop
 * @param people who fill at once; a cartridge is emptied by one of them, each with a gun
 * @param mixes in order; known and empty for what does not set once it is open
 */
public record MixPlan(
    StepPlace place,
    Figure<Duration> workingTime,
    boolean nozzle,
    int people,
    Figure<List<Mix>> mixes) {

  /**
   * The mixes of one product.
   *
   * @param pieces in the order of filling
   * @param product empty where the book has none
   * @param called what the book lacks then
   * @param sets whether it sets once mixed even where the book does not call it two-part: mortar
   * @param warmer of slab and air, °C
   */
  static MixPlan of(
      StepPlace place,
      Figure<List<MixPieces.Piece>> pieces,
      Optional<Product> product,
      Message called,
      boolean sets,
      Figure<Double> warmer,
      int people) {
    if (product.isEmpty()) {
      return new MixPlan(place, Figure.missing(called), false, people, Figure.missing(called));
    }
    Product p = product.get();
    boolean nozzle = p.mixing().nozzle().maybe().orElse(false);
    Figure<Duration> working = p.mixing().workingTime().flatMap(t -> warmer.flatMap(t::at));
    Figure<Boolean> two = sets ? Figure.known(true) : p.mixing().twoPart();
    int hands = nozzle ? 1 : people;
    Figure<List<Mix>> mixes =
        two.flatMap(
            mixed ->
                mixed
                    ? pieces
                        .with(p.spread().loss(), (all, loss) -> new MixPieces(all, loss, hands))
                        .flatMap(m -> m.mixed(p, working))
                    : Figure.known(List.of()));
    return new MixPlan(place, working, nozzle, people, mixes);
  }

  /** Whether it has to be used up before it sets, or nobody knows. */
  public boolean sets() {
    return mixes.maybe().map(m -> !m.isEmpty()).orElse(true);
  }

  /** The largest mix, mm³. */
  public double largest() {
    return mixes.maybe().orElse(List.of()).stream().mapToDouble(Mix::mixed).max().orElse(0);
  }

  /** The longest that a mix takes to be used up. */
  public Duration longest() {
    return mixes.maybe().orElse(List.of()).stream()
        .map(Mix::laying)
        .max(Duration::compareTo)
        .orElse(Duration.ZERO);
  }

  /** How many fill at once: of cartridges no more than there are. */
  public int fillers() {
    return nozzle ? Math.min(people, Math.max(1, count())) : people;
  }

  /**
   * How long the cartridges take with a gun for each who fills: whoever is done first takes the
   * next. Empty for what comes in no cartridge.
   */
  public Optional<Duration> emptied() {
    List<Mix> all = mixes.maybe().orElse(List.of());
    if (!nozzle || all.isEmpty()) {
      return Optional.empty();
    }
    PriorityQueue<Duration> guns =
        new PriorityQueue<>(Collections.nCopies(fillers(), Duration.ZERO));
    all.forEach(m -> guns.add(guns.remove().plus(m.laying())));
    return guns.stream().max(Comparator.naturalOrder());
  }

  /** What sets in the pail before it is used; the rest of the last mix left out, mm³. */
  public double wasted() {
    return rests().limit(Math.max(0, count() - 1)).sum();
  }

  private DoubleStream rests() {
    return mixes.maybe().orElse(List.of()).stream().mapToDouble(m -> m.mixed() - m.used());
  }

  /** How many mixes; 0 where that is not known. */
  public int count() {
    return mixes.maybe().orElse(List.of()).size();
  }

  /** What the crew is told; empty for what does not set once it is open. */
  public Optional<Message> told(UnitSystem units) {
    if (!mixes.isKnown()) {
      return Optional.of(Message.of("work.mix-plan.ask", mixes.text(m -> "")));
    }
    if (!sets()) {
      return Optional.empty();
    }
    String most = QuantityFormat.volume(largest(), units);
    long sets = workingTime.maybe().orElse(Duration.ZERO).toMinutes();
    if (nozzle) {
      long emptied = Math.max(1, (longest().toSeconds() + 59) / 60);
      return Optional.of(
          Message.of("work.mix-plan.cartridges", count(), most, emptied, sets, fillers()));
    }
    Message batches = Message.of("work.mix-plan.batches", count(), most, sets, people);
    return Optional.of(
        wasted() > 0
            ? Message.of("work.mix-plan.some-sets", batches, QuantityFormat.volume(wasted(), units))
            : batches);
  }

  /**
   * Whole kits to buy, by volume and what sets in the pail: also the rest of the last mix where
   * there are several places.
   */
  static Figure<Kits> kits(double mm3, Product p, List<MixPlan> plans) {
    double set =
        plans.stream()
            .filter(m -> !m.nozzle())
            .mapToDouble(m -> plans.size() == 1 ? m.wasted() : m.rests().sum())
            .sum();
    return p.spread()
        .loss()
        .with(p.spread().kits(), (loss, kits) -> Kits.of(mm3 / (1 - loss) + set, kits));
  }
}
