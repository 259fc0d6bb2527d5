package slabwright.site;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Advice that the client does not take. It stays when its advice is no longer given, and counts
 * again when it is.
 *
 * @param by name or initials of who declined; may be empty
 * @param on the day it was declined, when known
 */
public record Declined(AdviceId advice, String by, Optional<LocalDate> on) {
  /** Declined by somebody, some day. */
  public static Declined of(AdviceId advice) {
    return new Declined(advice, "", Optional.empty());
  }

  public Declined withBy(String v) {
    return new Declined(advice, v, on);
  }

  public Declined withOn(Optional<LocalDate> v) {
    return new Declined(advice, by, v);
  }
}
