package slabwright.units;

import java.util.function.Function;

/**
 * What reading a text gave: a value, or one sentence that says what was wrong and what to write.
 */
public sealed interface Parsed<T> {
  /** The text was understood. */
  record Ok<T>(T value) implements Parsed<T> {}

  /** The text was not understood; {@code why} is one sentence for the person who typed it. */
  record Bad<T>(String why) implements Parsed<T> {}

  static <T> Parsed<T> ok(T value) {
    return new Ok<>(value);
  }

  static <T> Parsed<T> bad(String why) {
    return new Bad<>(why);
  }

  default boolean isOk() {
    return this instanceof Ok<T>;
  }

  default <R> Parsed<R> map(Function<? super T, ? extends R> f) {
    if (this instanceof Ok<T> ok) {
      return new Ok<>(f.apply(ok.value()));
    }
    return new Bad<>(((Bad<T>) this).why());
  }

  /** The next reading from this value; what stops this one stops the next. */
  default <R> Parsed<R> flatMap(Function<? super T, Parsed<R>> f) {
    return this instanceof Ok<T> ok ? f.apply(ok.value()) : new Bad<>(((Bad<T>) this).why());
  }

  /**
   * The value, where a caller knows that the text is good.
   *
   * @throws IllegalArgumentException with the sentence, when it is not
   */
  default T orThrow() {
    if (this instanceof Bad<T> bad) {
      throw new IllegalArgumentException(bad.why());
    }
    return ((Ok<T>) this).value();
  }
}
