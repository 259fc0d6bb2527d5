package slabwright.work.step;

/** What a step does to the air. */
public sealed interface AirEffect {
  AirEffect NONE = new None();
  AirEffect DUST = new Dust();

  /** Nothing that is counted here. */
  record None() implements AirEffect {}

  /** Dust of what is ground. */
  record Dust() implements AirEffect {}

  /**
   * Vapour of what is laid.
   *
   * @param product its id in the shop book
   * @param share of one coat's volume that the step lays, 0 to 1
   */
  record Vapour(String product, double share) implements AirEffect {}
}
