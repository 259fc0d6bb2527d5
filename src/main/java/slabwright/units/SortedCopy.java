package slabwright.units;

import java.util.Collection;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Unchangeable copies that are gone through in the order of their keys. The library's own go
 * through theirs in another order at every start of the program, so that one plan would give two
 * papers.
 */
public final class SortedCopy {
  private SortedCopy() {}

  /**
   * The members, sorted.
   *
   * @throws NullPointerException when one is null
   */
  public static <T extends Comparable<? super T>> Set<T> of(Collection<? extends T> members) {
    return Collections.unmodifiableSet(new TreeSet<T>(members));
  }

  /**
   * The entries, sorted by key.
   *
   * @throws NullPointerException when a key is null
   */
  public static <K extends Comparable<? super K>, V> Map<K, V> of(Map<K, V> entries) {
    return Collections.unmodifiableMap(new TreeMap<K, V>(entries));
  }
}
