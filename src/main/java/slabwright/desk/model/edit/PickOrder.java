package slabwright.desk.model.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import slabwright.desk.model.PlanItem;
import slabwright.site.FloorArea;

/** What can be picked on a floor area, in the order in which keys go through it. */
public final class PickOrder {
  private PickOrder() {}

  /**
   * The thing after those picked, or before them; after the last comes the first. With nothing
   * picked it is the first, or the last.
   *
   * @param picked things of the floor area, and others that keys do not lead to
   * @param back whether the one before is meant
   * @return empty where there is nothing to pick
   */
  public static Optional<PlanItem> next(FloorArea area, Collection<PlanItem> picked, boolean back) {
    List<PlanItem> all = of(area);
    int[] at = IntStream.range(0, all.size()).filter(i -> picked.contains(all.get(i))).toArray();
    if (all.isEmpty() || at.length == 0) {
      return all.isEmpty() ? Optional.empty() : Optional.of(all.get(back ? all.size() - 1 : 0));
    }
    int to = back ? at[0] - 1 : at[at.length - 1] + 1;
    return Optional.of(all.get(Math.floorMod(to, all.size())));
  }

  /** Round the outline: a corner, the wall from it, the doorways in that; then marks, inlays. */
  private static List<PlanItem> of(FloorArea area) {
    List<PlanItem> all = new ArrayList<>();
    for (int i = 0; i < area.outline().size(); i++) {
      int wall = i;
      all.add(new PlanItem.OfCorner(i));
      all.add(new PlanItem.OfWall(i));
      area.doorways().stream()
          .filter(d -> d.piece() == wall)
          .sorted(Comparator.comparingDouble(d -> d.offset().mm()))
          .forEach(d -> all.add(new PlanItem.OfDoorway(d.id())));
    }
    area.marks().forEach(m -> all.add(new PlanItem.OfMark(m.id())));
    area.inlays().forEach(i -> all.add(new PlanItem.OfInlay(i.id())));
    return all;
  }
}
