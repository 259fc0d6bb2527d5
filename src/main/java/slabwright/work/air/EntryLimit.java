package slabwright.work.air;

/** What keeps people out of air with vapour in it, the strictest first. */
public enum EntryLimit {
  TENTH_OF_LEL,
  /** Immediately dangerous to life or health. */
  DANGER,
  /** More than the named breathing protection is assigned. */
  PROTECTION_FACTOR,
  FIFTEEN_MINUTES,
  /** The average of the person's shift. */
  EIGHT_HOURS;

  /** Whether nobody at all goes in, however protected. */
  public boolean isForEveryone() {
    return switch (this) {
      case TENTH_OF_LEL, DANGER -> true;
      case PROTECTION_FACTOR, FIFTEEN_MINUTES, EIGHT_HOURS -> false;
    };
  }
}
