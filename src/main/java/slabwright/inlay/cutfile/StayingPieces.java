package slabwright.inlay.cutfile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * Vinyl that is cut all round and stays all the same: the middle of an O, and what a seam leaves of
 * one in each of its panels. It looks like an opening to whoever goes by the cut lines. Found once
 * for all papers that tell of it.
 */
final class StayingPieces {
  private final Map<Integer, Map<Panel, List<Region>>> byLayer = new HashMap<>();

  private StayingPieces() {}

  /** The pieces of every panel that is cut for any of the stencils. */
  static StayingPieces of(StencilSet set, PanelPlan plan) {
    StayingPieces all = new StayingPieces();
    for (Stencil stencil : set.stencils()) {
      Map<Panel, List<Region>> pieces = new LinkedHashMap<>();
      for (Panel panel : plan.cut(stencil)) {
        pieces.put(panel, of(stencil, panel, film(panel, plan.of(stencil))));
      }
      all.byLayer.put(stencil.layer(), pieces);
    }
    return all;
  }

  /** The pieces of all panels of a stencil, in the blank's frame, panel by panel, largest first. */
  List<Region> of(Stencil stencil) {
    List<Region> pieces = new ArrayList<>();
    byLayer.get(stencil.layer()).values().forEach(pieces::addAll);
    return pieces;
  }

  /** The pieces of one panel that is cut for a stencil, in the blank's frame, largest first. */
  List<Region> of(Stencil stencil, Panel panel) {
    return byLayer.get(stencil.layer()).get(panel);
  }

  private static Bounds film(Panel panel, PanelPlan plan) {
    Vec middle = panel.box().middle();
    return plan.blanks().stream().filter(b -> b.contains(middle)).findFirst().orElse(plan.blank());
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
