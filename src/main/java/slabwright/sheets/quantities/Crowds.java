package slabwright.sheets.quantities;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Rows of one kind that are so many that nobody reads them one by one: told together. */
final class Crowds {
  /** More than so many of a kind are a crowd. */
  private static final int MOST = 8;

  private Crowds() {}

  /** Each thing by itself, a crowd where its first one stands; the order is kept. */
  static <T, K> List<List<T>> of(List<T> all, Function<T, K> kind) {
    Map<K, List<T>> byKind = new LinkedHashMap<>();
    all.forEach(t -> byKind.computeIfAbsent(kind.apply(t), k -> new ArrayList<>()).add(t));
    List<List<T>> told = new ArrayList<>();
    for (T t : all) {
      List<T> same = byKind.get(kind.apply(t));
      if (same.size() <= MOST) {
        told.add(List.of(t));
      } else if (same.get(0) == t) {
        told.add(same);
      }
    }
    return told;
  }
}
