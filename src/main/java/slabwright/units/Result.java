package slabwright.units;

import java.util.List;
import java.util.function.Function;

/** What was asked for, or why it can't be. */
public sealed interface Result<T> {
  /** It went well. */
  record Ok<T>(T value) implements Result<T> {}

  /** It was refused, for one reason or more. */
  record Refused<T>(List<Refusal> refusals) implements Result<T> {
    /**
     * A refusal.
     *
     * @throws IllegalArgumentException when no reason is given
     */
    public Refused {
      refusals = List.copyOf(refusals);
      if (refusals.isEmpty()) {
        throw new IllegalArgumentException("refused without a reason");
      }
    }

    /** The first reason. */
    public Message message() {
      return refusals.get(0).message();
    }
  }

  static <T> Result<T> ok(T value) {
    return new Ok<>(value);
  }

  static <T> Result<T> refused(Message why) {
    return new Refused<>(List.of(Refusal.of(why)));
  }

  static <T> Result<T> refused(List<Refusal> why) {
    return new Refused<>(why);
  }

  default boolean isOk() {
    return this instanceof Ok<T>;
  }

  default <R> Result<R> map(Function<? super T, ? extends R> f) {
    return flatMap(v -> new Ok<>(f.apply(v)));
  }

  /** The next result from this value; what stops this one stops the next. */
  default <R> Result<R> flatMap(Function<? super T, Result<R>> f) {
    if (this instanceof Ok<T> ok) {
      return f.apply(ok.value());
    }
    return new Refused<>(((Refused<T>) this).refusals());
  }

  /**
   * The value, where a caller knows that it is there.
   *
   * @throws IllegalArgumentException with the refusals, when it is not
   */
  default T orThrow() {
    if (this instanceof Refused<T> refused) {
      throw new IllegalArgumentException(refused.refusals().toString());
    }
    return ((Ok<T>) this).value();
  }
}
