package slabwright.work.prep;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.Kit;
import slabwright.work.book.Product;

/**
 * What is filled one after the other with one product.
 *
 * @param loss share of what is mixed that goes into no gap
 * @param people who fill one mix together
 */
record MixPieces(List<Piece> pieces, double loss, int people) {
  /** Below this, in mm³ and in milliseconds, nothing is left. */
  private static final double NOTHING = 1e-6;

  /**
   * A gap or trench.
   *
   * @param mm3 its volume
   * @param time of one person to fill it
   */
  record Piece(double mm3, Duration time) {}

  MixPieces {
    pieces = pieces.stream().filter(p -> p.mm3() > 0).toList();
  }

  /** The mixes; refused where mixing alone takes as long as the mix can be laid. */
  Figure<List<Mix>> mixed(Product p, Figure<Duration> working) {
    Figure<List<Double>> kits =
        p.spread()
            .kits()
            .map(l -> l.stream().map(Kit::mm3).sorted(Comparator.reverseOrder()).toList());
    if (p.mixing().nozzle().maybe().orElse(false)) {
      return kits.with(working, (sold, t) -> mixes(sold.get(0), Double.POSITIVE_INFINITY, true));
    }
    Figure<Duration> left = working.with(p.mixing().mixingTime(), Duration::minus);
    return left.flatMap(
        time ->
            time.isNegative() || time.isZero()
                ? Figure.refused(Message.of("work.batch-parameters.mixing-takes-longer"))
                : kits.with(p.spread().splits(), (sold, split) -> bounded(p, sold, split, time)));
  }

  private List<Mix> bounded(Product p, List<Double> sold, boolean split, Duration time) {
    double most = p.mixing().largestBatch().maybe().orElse(Double.POSITIVE_INFINITY);
    double each = (double) time.toMillis() * people;
    return split ? even(most, each) : wholeKits(sold, each);
  }

  /** As few as can be, and those alike in time. */
  private List<Mix> even(double most, double each) {
    List<Mix> fewest = mixes(most, each, false);
    double all = pieces.stream().mapToDouble(p -> p.time().toMillis()).sum();
    List<Mix> alike = mixes(most, Math.min(each, all / fewest.size() + 1), false);
    return alike.size() == fewest.size() ? alike : fewest;
  }

  /** From the largest kit that is used up in time, else the smallest: its rest sets in the pail. */
  private List<Mix> wholeKits(List<Double> sold, double each) {
    List<Mix> last = List.of();
    for (double kit : sold) {
      last = mixes(kit, each, true);
      List<Mix> all = last;
      boolean usedUp =
          all.stream()
              .filter(m -> m.number() < all.size())
              .allMatch(m -> m.used() > m.mixed() * (1 - 1e-6));
      if (usedUp) {
        return all;
      }
    }
    return last;
  }

  /**
   * Mixes one after the other.
   *
   * @param most mm³ of one, the loss included
   * @param each milliseconds of one person that one lasts
   * @param whole whether the most is mixed each time, needed or not
   */
  private List<Mix> mixes(double most, double each, boolean whole) {
    List<Mix> all = new ArrayList<>();
    int at = 0;
    double done = 0;
    while (at < pieces.size()) {
      double used = 0;
      double spent = 0;
      while (at < pieces.size() && most - used > NOTHING && each - spent > NOTHING) {
        double mm3 = pieces.get(at).mm3() / (1 - loss);
        double millis = Math.max(1, pieces.get(at).time().toMillis());
        double share = Math.min(1 - done, Math.min((most - used) / mm3, (each - spent) / millis));
        used += share * mm3;
        spent += share * millis;
        done += share;
        if (done > 1 - 1e-12) {
          at++;
          done = 0;
        }
      }
      Duration laying = Duration.ofMillis(Math.round(spent / people));
      all.add(new Mix(all.size() + 1, whole ? most : used, used, laying));
    }
    return all;
  }
}
