package slabwright.inlay.cutfile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * Vinyl that is cut all round and stays all the same: the middle of an O, and what a seam leaves of
 * one in each of its panels. It looks like an opening to whoever goes by the cut lines.
 */
final class StayingPieces {
  private StayingPieces() {}

  /** The pieces of every panel, in the blank's frame, panel by panel, largest first. */
  static List<Region> of(Stencil stencil, PanelPlan plan) {
    List<Region> pieces = new ArrayList<>();
    plan.cut(stencil).forEach(panel -> pieces.addAll(of(stencil, panel, plan.of(stencil))));
    return pieces;
  }

  /** The pieces of one panel, in the blank's frame, largest first. */
  static List<Region> of(Stencil stencil, Panel panel, PanelPlan plan) {
    Vec middle = panel.box().middle();
    Bounds film =
        plan.blanks().stream().filter(b -> b.contains(middle)).findFirst().orElse(plan.blank());
    return of(stencil, panel, film);
  }

  /** What does not reach the blank's own edge; of a panel amid others the largest part is none. */
  private static List<Region> of(Stencil stencil, Panel panel, Bounds blank) {
    List<Region> parts =
        Region.rectangle(panel.box()).minus(stencil.openings()).parts().stream()
            .sorted(Comparator.comparingDouble(Region::area).reversed())
            .toList();
    boolean amid = parts.stream().noneMatch(p -> reachesEdge(p.bounds(), blank));
    return parts.stream().skip(amid ? 1 : 0).filter(p -> !reachesEdge(p.bounds(), blank)).toList();
  }

  private static boolean reachesEdge(Bounds part, Bounds blank) {
    return part.minX() <= blank.minX()
        || part.minY() <= blank.minY()
        || part.maxX() >= blank.maxX()
        || part.maxY() >= blank.maxY();
  }
}
