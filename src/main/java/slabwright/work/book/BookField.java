package slabwright.work.book;

import java.util.Optional;
import slabwright.units.Message;

/**
 * One value of the shop book as a form shows it.
 *
 * @param kind of the section, such as {@code product}
 * @param section its name, or empty
 * @param value as written, unit included; empty or {@code ?} when it is not known
 * @param example how such a value is written
 * @param comment what stands beside it in the file, often its source; may be empty
 * @param fault why it can't be read, if it can't
 */
public record BookField(
    String kind,
    String section,
    String key,
    String value,
    Message example,
    String comment,
    Optional<Message> fault) {
  /** Whether the book is silent on it. */
  public boolean isMissing() {
    return value.isBlank() || value.equals("?");
  }
}
