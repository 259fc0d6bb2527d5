package slabwright.inlay.proof;

import java.util.List;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.shape.Bounds;
import slabwright.shape.Region;

/**
 * What the shop should have drawn.
 *
 * <p>Frame: mm from the blank's top-left corner as read, x right, y down.
 *
 * @param openings what is cut out
 * @param blank the vinyl's outer rectangle
 * @param panels the pieces the blank is cut in, overlaps included; may be empty or the blank alone
 */
public record ProofPlan(Region openings, Bounds blank, List<Panel> panels) {
  public ProofPlan {
    panels = List.copyOf(panels);
  }

  /**
   * What the shop should draw of one stencil of an inlay.
   *
   * @param stencil from 1, in laying order
   */
  public static ProofPlan of(InlayPlan plan, int stencil) {
    List<Panel> panels = plan.panels().map(PanelPlan::panels).orElse(List.of());
    return new ProofPlan(
        plan.stencils().stencils().get(stencil - 1).openings(), plan.stencils().blank(), panels);
  }

  /** The panels that have anything to cut; the others need no file. */
  List<Panel> cutPanels() {
    return panels.stream()
        .filter(p -> !openings.intersect(Region.rectangle(p.box())).isEmpty())
        .toList();
  }

  /** Every panel that has anything to cut, with its openings. */
  List<PlannedPiece> pieces() {
    return cutPanels().stream()
        .map(
            p -> new PlannedPiece(p.name(), p.box(), openings.intersect(Region.rectangle(p.box()))))
        .toList();
  }

  public static ProofPlan whole(Region openings, Bounds blank) {
    return new ProofPlan(openings, blank, List.of());
  }
}
