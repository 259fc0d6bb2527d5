package slabwright.work.air;

/** How long until a concentration has fallen to a level. */
public sealed interface ClearingTime {
  /** It is not above the level. */
  record AlreadyBelow() implements ClearingTime {}

  /** After so many minutes. */
  record After(double minutes) implements ClearingTime {}

  /** Without fresh air it does not fall. */
  record Never() implements ClearingTime {}

  /** From the purge formula {@code t = (V / Q') ln(C1 / C2)}. */
  static ClearingTime of(double share, double level, double volume, double fresh) {
    if (share <= level) {
      return new AlreadyBelow();
    }
    return fresh <= 0 ? new Never() : new After(volume / fresh * Math.log(share / level));
  }
}
