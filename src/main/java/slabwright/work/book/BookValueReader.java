package slabwright.work.book;

import java.time.Duration;
import slabwright.units.Parsed;

/** Reads single values as they are written in the shop book. */
public final class BookValueReader {
  private BookValueReader() {}

  /** A volume such as {@code 4.5 gal} or {@code 17 L}, in mm³. */
  public static Parsed<Double> volume(String text) {
    return BookDimension.VOLUME.read(text);
  }

  /** A time such as {@code 6.5 h} or {@code 90 min}; bad when it is nothing. */
  public static Parsed<Duration> time(String text) {
    Parsed<Duration> read = BookSection.duration(text);
    return read instanceof Parsed.Ok<Duration> ok && ok.value().isZero()
        ? Parsed.bad("\"%s\" is no time; work takes some".formatted(text))
        : read;
  }
}
