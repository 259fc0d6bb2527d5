package slabwright.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import slabwright.desk.model.PlanItem;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/** How far each of several things goes, mm, to stand in line or with the same gaps. */
final class Arranging {
  /** What is brought into line; sides as seen on the plan. */
  public enum Line {
    LEFT_SIDES,
    RIGHT_SIDES,
    TOPS,
    FEET,
    MIDDLES_ACROSS,
    MIDDLES_UP
  }

  /** A thing and what it covers. */
  public record Placed(PlanItem item, Bounds bounds) {}

  private Arranging() {}

  /** Each goes to the outermost side, or to the middle of them all. */
  public static Map<PlanItem, Vec> lineUp(List<Placed> things, Line line) {
    Bounds all = Bounds.EMPTY;
    for (Placed p : things) {
      all = all.including(p.bounds());
    }
    Map<PlanItem, Vec> shifts = new LinkedHashMap<>();
    for (Placed p : things) {
      shifts.put(p.item(), shift(p.bounds(), all, line));
    }
    return shifts;
  }

  private static Vec shift(Bounds b, Bounds all, Line line) {
    return switch (line) {
      case LEFT_SIDES -> new Vec(all.minX() - b.minX(), 0);
      case RIGHT_SIDES -> new Vec(all.maxX() - b.maxX(), 0);
      case TOPS -> new Vec(0, all.maxY() - b.maxY());
      case FEET -> new Vec(0, all.minY() - b.minY());
      case MIDDLES_ACROSS -> new Vec(0, all.middle().y() - b.middle().y());
      case MIDDLES_UP -> new Vec(all.middle().x() - b.middle().x(), 0);
    };
  }

  /**
   * The outermost two stay; those between are laid so that all gaps are the same.
   *
   * @param across whether along x, else along y
   */
  public static Map<PlanItem, Vec> space(List<Placed> things, boolean across) {
    ToDoubleFunction<Placed> low = p -> across ? p.bounds().minX() : p.bounds().minY();
    ToDoubleFunction<Placed> size = p -> across ? p.bounds().width() : p.bounds().height();
    ToDoubleFunction<Placed> middle = p -> low.applyAsDouble(p) + size.applyAsDouble(p) / 2;
    List<Placed> order = new ArrayList<>(things);
    order.sort(Comparator.comparingDouble(middle));
    Map<PlanItem, Vec> shifts = new LinkedHashMap<>();
    if (order.size() < 3) {
      return shifts;
    }
    Placed last = order.get(order.size() - 1);
    double begin = low.applyAsDouble(order.get(0));
    double span = low.applyAsDouble(last) + size.applyAsDouble(last) - begin;
    double covered = order.stream().mapToDouble(size).sum();
    double gap = (span - covered) / (order.size() - 1);
    double at = begin;
    for (Placed p : order) {
      double by = at - low.applyAsDouble(p);
      shifts.put(p.item(), across ? new Vec(by, 0) : new Vec(0, by));
      at += size.applyAsDouble(p) + gap;
    }
    return shifts;
  }
}
