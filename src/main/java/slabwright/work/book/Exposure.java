package slabwright.work.book;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How much aggregate the ground floor shows, the trade's order. */
public enum Exposure {
  CREAM,
  FINE,
  MEDIUM,
  COARSE;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<Exposure> named(String word) {
    return Arrays.stream(values()).filter(e -> e.word().equals(word)).findFirst();
  }
}
