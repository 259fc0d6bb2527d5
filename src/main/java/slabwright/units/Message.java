package slabwright.units;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;

/**
 * Something to be said to a reader, not yet in words: a key and the values that go into its
 * sentence. The words are made where they are read, in the reader's language.
 *
 * @param key names the sentence; what stands before its first dot is the room that says it
 * @param values texts, numbers, days, hours or further messages, in the order the sentence counts
 *     them
 */
public record Message(String key, List<Object> values) {
  /**
   * A message.
   *
   * @throws IllegalArgumentException for a value that is none of these
   */
  public Message {
    values = List.copyOf(values);
    for (Object v : values) {
      if (!(v instanceof String
          || v instanceof Number
          || v instanceof LocalDate
          || v instanceof LocalTime
          || v instanceof LocalDateTime
          || v instanceof Message)) {
        throw new IllegalArgumentException(key + " was given a " + v.getClass().getName());
      }
    }
  }

  public static Message of(String key, Object... values) {
    return new Message(key, List.of(values));
  }
}
