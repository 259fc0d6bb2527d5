package slabwright.work.coat;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.work.book.Figure;

/**
 * What bounds the batches of one coat of a two-part product.
 *
 * @param needed mm³ for the coat
 * @param kits mm³ of the kits it is sold in
 * @param splits whether part of an unmixed kit may be mixed
 * @param workingTime from the start of mixing, at the day's temperature
 * @param mixing time for one batch
 * @param largest mm³ that can be mixed at once
 * @param coverage mm²/mm³
 * @param rate mm² an hour for one person
 * @param people who lay at once
 */
record BatchParameters(
    double needed,
    List<Double> kits,
    boolean splits,
    Duration workingTime,
    Duration mixing,
    Optional<Double> largest,
    double coverage,
    double loss,
    double rate,
    int people) {
  public BatchParameters {
    kits = kits.stream().sorted(Comparator.reverseOrder()).toList();
  }

  /**
   * The batches. Refused when even the smallest kit outlasts its working time; the sentence says
   * how many hands would do.
   */
  public Figure<Batches> plan() {
    Duration left = workingTime.minus(mixing);
    if (left.isNegative() || left.isZero()) {
      return Figure.refused(Message.of("work.batch-parameters.mixing-takes-longer"));
    }
    double most = Math.min(rolledIn(left), largest.orElse(Double.POSITIVE_INFINITY));
    return splits ? Figure.known(Batches.even(this, most)) : whole(most);
  }

  private Figure<Batches> whole(double most) {
    return kits.stream()
        .filter(k -> k <= most * (1 + 1e-9))
        .findFirst()
        .map(k -> Figure.known(Batches.ofKits(this, k, (int) Math.floor(most / k + 1e-9))))
        .orElseGet(() -> Figure.refused(addHands()));
  }

  private Message addHands() {
    double kit = kits.get(kits.size() - 1);
    if (largest.filter(l -> l < kit).isPresent()) {
      return Message.of("work.batch-parameters.smallest-kit-too-large");
    }
    return Message.of(
        "work.batch-parameters.add-hands",
        timeFor(kit).toMinutes(),
        people,
        workingTime.minus(mixing).toMinutes(),
        handsFor(kit));
  }

  /** How many people lay a volume within the working time. */
  int handsFor(double mm3) {
    double hours = workingTime.minus(mixing).toMillis() / 3.6e6;
    return (int) Math.ceil(ProductAmount.covered(mm3, coverage, loss) / (rate * hours) - 1e-9);
  }

  /** Mm³ that the people lay in a time. */
  double rolledIn(Duration time) {
    return rate * people * (time.toMillis() / 3.6e6) / (coverage * (1 - loss));
  }

  /** How long the people take to lay a volume. */
  Duration timeFor(double mm3) {
    double hours = ProductAmount.covered(mm3, coverage, loss) / (rate * people);
    return Duration.ofMillis(Math.round(hours * 3.6e6));
  }
}
