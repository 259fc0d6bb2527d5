package slabwright.work.book;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import slabwright.units.Message;

/**
 * A value that may not be known: what a computation from the shop book gives. A value that misses
 * something carries every name that is missing, so that a sheet can ask for all of them at once.
 */
public sealed interface Figure<T> {
  /** The value. */
  record Known<T>(T value) implements Figure<T> {}

  /** Not in the shop book; the names say what is. */
  record Missing<T>(List<Message> names) implements Figure<T> {
    public Missing {
      names = List.copyOf(new LinkedHashSet<>(names));
    }
  }

  /** Known, but it can't be done so; it says why and what to do. */
  record Refused<T>(Message why) implements Figure<T> {}

  static <T> Figure<T> known(T value) {
    return new Known<>(value);
  }

  static <T> Figure<T> missing(Message name) {
    return new Missing<>(List.of(name));
  }

  static <T> Figure<T> refused(Message why) {
    return new Refused<>(why);
  }

  /** The value, where a reason for its absence is of no interest. */
  default Optional<T> maybe() {
    return this instanceof Known<T> k ? Optional.of(k.value()) : Optional.empty();
  }

  default boolean isKnown() {
    return this instanceof Known<T>;
  }

  default <R> Figure<R> map(Function<? super T, ? extends R> f) {
    return flatMap(v -> known(f.apply(v)));
  }

  /** The next figure from this value; what stops this one stops the next. */
  default <R> Figure<R> flatMap(Function<? super T, Figure<R>> f) {
    if (this instanceof Known<T> k) {
      return f.apply(k.value());
    }
    return stopped();
  }

  /** One figure from two. A refusal wins; what is missing on both sides is named. */
  default <U, R> Figure<R> with(Figure<U> other, BiFunction<? super T, ? super U, ? extends R> f) {
    if (this instanceof Known<T> a && other instanceof Known<U> b) {
      return known(f.apply(a.value(), b.value()));
    }
    if (this instanceof Missing<T> a && other instanceof Missing<U> b) {
      List<Message> names = new ArrayList<>(a.names());
      names.addAll(b.names());
      return new Missing<>(names);
    }
    boolean mine = this instanceof Refused<T> || other instanceof Known<U>;
    return mine ? stopped() : other.stopped();
  }

  /** All of them, or what stops them. */
  static <T> Figure<List<T>> all(List<Figure<T>> figures) {
    Figure<List<T>> sum = known(List.of());
    for (Figure<T> f : figures) {
      sum =
          sum.with(
              f,
              (list, v) -> {
                List<T> longer = new ArrayList<>(list);
                longer.add(v);
                return List.copyOf(longer);
              });
    }
    return sum;
  }

  /** The value as it is shown, a text or a message, or why there is none. */
  default Message text(Function<? super T, ?> show) {
    if (this instanceof Known<T> k) {
      Object shown = show.apply(k.value());
      return shown instanceof Message m ? m : Message.of("work.figure.shown", shown);
    }
    return this instanceof Refused<T> r
        ? r.why()
        : Message.of("work.figure.not-in-the-shop-book", names());
  }

  private Message names() {
    return ((Missing<T>) this)
        .names().stream().reduce((a, b) -> Message.of("work.figure.and-also", a, b)).orElseThrow();
  }

  /** This figure as one of another type; only for one that is not known. */
  private <R> Figure<R> stopped() {
    if (this instanceof Missing<T> m) {
      return new Missing<>(m.names());
    }
    return new Refused<>(((Refused<T>) this).why());
  }
}
