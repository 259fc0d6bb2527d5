package slabwright.work.book;

/**
 * How fast a product may plausibly be laid: vapour is reckoned with it, for a crew that is quicker
 * than its book makes more vapour a minute.
 */
public final class FastestRate {
  /**
   * How many times the usual rate is taken where the book is silent: common practice, no source.
   */
  public static final double TAKEN = 2;

  private FastestRate() {}

  /**
   * What part of the usual time the fastest laying takes, at most 1.
   *
   * @param usual rate an hour
   * @param fastest rate an hour; taken as {@link #TAKEN} times the usual one when not known
   */
  public static double timeShare(Figure<Double> usual, Figure<Double> fastest) {
    boolean stated = usual.maybe().filter(u -> u > 0).isPresent() && fastest.isKnown();
    return stated
        ? Math.min(1, usual.maybe().orElseThrow() / fastest.maybe().orElseThrow())
        : 1 / TAKEN;
  }
}
