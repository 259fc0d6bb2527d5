package slabwright.site.job;

import java.time.LocalDate;
import java.util.Optional;

/** Something that stops work on a floor until it is settled. */
public record Stop(Kind kind, State state) {
  /** The closed set of what stops work. */
  public enum Kind {
    ASBESTOS,
    LEAD_PAINT,
    /** A post-tensioned or heated slab, before anything is drilled into it. */
    SLAB_BEFORE_DRILLING,
    FIRE_PERMIT,
    OWNERS_SURVEY
  }

  /** How far it is settled. */
  public sealed interface State {}

  /** Not settled: the work waits. */
  public record Open() implements State {}

  /**
   * Settled.
   *
   * @param by who cleared it
   * @param on the day it was cleared
   * @param report number or title of the report; may be empty
   */
  public record Cleared(String by, LocalDate on, String report) implements State {}

  /**
   * Confirmed to lie outside this job's scope.
   *
   * @param by who confirmed it
   * @param on the day, when known
   * @param reason why it does not apply; may be empty
   */
  public record Confirmed(String by, Optional<LocalDate> on, String reason) implements State {}
}
