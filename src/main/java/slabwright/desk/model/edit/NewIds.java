package slabwright.desk.model.edit;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Mark;
import slabwright.site.Site;

/** Ids that nothing on the plan has yet. */
public final class NewIds {
  private NewIds() {}

  public static String mark(FloorArea area) {
    return next("m", area.marks().stream().map(Mark::id).toList());
  }

  public static String doorway(FloorArea area) {
    return next("d", area.doorways().stream().map(Doorway::id).toList());
  }

  public static String inlay(FloorArea area) {
    return next("i", area.inlays().stream().map(Inlay::id).toList());
  }

  public static String area(Site site) {
    return next("a", site.areas().stream().map(FloorArea::id).toList());
  }

  /** The first of prefix1, prefix2… that is not taken. */
  public static String next(String prefix, Collection<String> taken) {
    Set<String> all = new HashSet<>(taken);
    int n = 1;
    while (all.contains(prefix + n)) {
      n++;
    }
    return prefix + n;
  }
}
