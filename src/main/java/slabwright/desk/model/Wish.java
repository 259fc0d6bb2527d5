package slabwright.desk.model;

import java.util.Optional;

/**
 * What a {@link Computed} value should be now.
 *
 * @param key of the value wanted
 * @param scope what it belongs to, such as the plan that is open; a value of another scope goes at
 *     once
 */
public record Wish<K>(Kind kind, Optional<K> key, Optional<Object> scope) {
  /** Whether a value is wanted at all. */
  public enum Kind {
    KEY,
    /** No value, and none is shown. */
    NOTHING,
    /** Nothing new is begun; what is there or on its way stays. */
    AS_IT_IS,
    /** What is on its way is put off until a key is wished for again. */
    PAUSE
  }

  /** The value of a key; nothing without one. */
  public static <K> Wish<K> of(Optional<K> key) {
    return new Wish<>(key.isPresent() ? Kind.KEY : Kind.NOTHING, key, Optional.empty());
  }

  public static <K> Wish<K> of(K key) {
    return of(Optional.of(key));
  }

  public static <K> Wish<K> nothing() {
    return of(Optional.empty());
  }

  public static <K> Wish<K> asItIs() {
    return new Wish<>(Kind.AS_IT_IS, Optional.empty(), Optional.empty());
  }

  public static <K> Wish<K> pause() {
    return new Wish<>(Kind.PAUSE, Optional.empty(), Optional.empty());
  }

  /** The same wish, of things in one scope. */
  public Wish<K> in(Object place) {
    return new Wish<>(kind, key, Optional.of(place));
  }
}
