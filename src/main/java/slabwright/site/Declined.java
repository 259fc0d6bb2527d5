package slabwright.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Advice that the client does not take. It stays when its advice is no longer given, and counts
 * again when it is.
 *
 * @param by name or initials of who declined; may be empty
 * @param on the day it was declined, when known
 */
@RecordBuilder
public record Declined(AdviceId advice, String by, Optional<LocalDate> on)
    implements DeclinedBuilder.With {
  /** Declined by somebody, some day. */
  public static Declined of(AdviceId advice) {
    return new Declined(advice, "", Optional.empty());
  }
}
