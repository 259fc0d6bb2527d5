package slabwright.work.book;

import java.time.Duration;
import slabwright.units.Message;
import slabwright.units.Result;

/** Reads single values as they are written in the shop book. */
public final class BookValueReader {
  private BookValueReader() {}

  /** A volume such as {@code 4.5 gal} or {@code 17 L}, in mm³. */
  public static Result<Double> volume(String text) {
    return BookDimension.VOLUME.read(text);
  }

  /** A time such as {@code 6.5 h} or {@code 90 min}; bad when it is nothing. */
  public static Result<Duration> time(String text) {
    Result<Duration> read = BookSection.duration(text);
    return read instanceof Result.Ok<Duration> ok && ok.value().isZero()
        ? Result.refused(Message.of("work.book-value-reader.is-no-time-work-takes", text))
        : read;
  }
}
