package slabwright.sheets.prep;

import java.util.ArrayList;
import java.util.List;

/** Rows of the hand-work list that say the same of many things, as one row each. */
final class HandWorkGroups {
  /** So many of one kind in a row are told one by one. */
  private static final int MOST = 4;

  private HandWorkGroups() {}

  /** In their order; only neighbours are told as one, so that their numbers follow each other. */
  static List<List<HandWorkItem>> of(List<HandWorkItem> items) {
    List<List<HandWorkItem>> groups = new ArrayList<>();
    int from = 0;
    while (from < items.size()) {
      int to = from + 1;
      while (to < items.size() && isAlike(items.get(from), items.get(to))) {
        to++;
      }
      List<HandWorkItem> same = items.subList(from, to);
      if (same.size() > MOST) {
        groups.add(List.copyOf(same));
      } else {
        same.forEach(i -> groups.add(List.of(i)));
      }
      from = to;
    }
    return groups;
  }

  private static boolean isAlike(HandWorkItem a, HandWorkItem b) {
    return a.kind().equals(b.kind())
        && a.at().isPresent() == b.at().isPresent()
        && a.edge().isPresent() == b.edge().isPresent();
  }
}
