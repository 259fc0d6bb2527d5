package slabwright.site.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** New lists from old ones. */
final class ListEdits {
  private ListEdits() {}

  static <T> List<T> with(List<T> list, T more) {
    List<T> copy = new ArrayList<>(list);
    copy.add(more);
    return copy;
  }

  /** The list with the item of the same id replaced, or with the item added last. */
  static <T> List<T> put(List<T> list, T item, Function<T, String> id) {
    List<T> copy = new ArrayList<>(list);
    for (int i = 0; i < copy.size(); i++) {
      if (id.apply(copy.get(i)).equals(id.apply(item))) {
        copy.set(i, item);
        return copy;
      }
    }
    copy.add(item);
    return copy;
  }

  /** The list without the item of that id; empty when there is none. */
  static <T> Optional<List<T>> without(List<T> list, String gone, Function<T, String> id) {
    List<T> left = list.stream().filter(t -> !id.apply(t).equals(gone)).toList();
    return left.size() == list.size() ? Optional.empty() : Optional.of(left);
  }
}
