package slabwright.inlay.panel;

import java.util.Collection;
import java.util.List;
import slabwright.inlay.stencil.Finding;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;

/**
 * How the blank of an inlay is made of panels; the same for all its stencils.
 *
 * @param blank from (0, 0) to its width and height
 * @param turn which way the strips run
 * @param seams places of the seams across the strips, in mm from the blank's left or top side
 * @param panels in the order of cutting along the roll, which is the order of their names
 * @param layingOrder names in the order of laying: the far side from the traffic first, so that
 *     each panel laps over the one laid before and no upper edge faces people's feet
 * @param laps the seams and inner joints with their witness marks
 * @param ticks the registration ticks of all panels, common to all stencils and the floor
 * @param rollLength film used for a stencil that opens on every panel, mm
 * @param waste share of that film's area outside the blank, 0 to 1
 * @param cost what the seams cost, see {@link SeamWeights}
 * @param findings what the person should know
 */
public record PanelPlan(
    Bounds blank,
    StripDirection turn,
    List<Double> seams,
    List<Panel> panels,
    List<String> layingOrder,
    List<Seam> laps,
    List<RegistrationTick> ticks,
    double rollLength,
    double waste,
    SeamCost cost,
    List<Finding> findings) {
  public PanelPlan {
    seams = List.copyOf(seams);
    panels = List.copyOf(panels);
    layingOrder = List.copyOf(layingOrder);
    laps = List.copyOf(laps);
    ticks = List.copyOf(ticks);
    findings = List.copyOf(findings);
  }

  /** The panels that have an opening of this stencil; the others are not cut for it. */
  public List<Panel> cut(Stencil stencil) {
    return panels.stream().filter(p -> !p.openings(stencil).isEmpty()).toList();
  }

  /** Film used for this stencil, mm of roll. */
  public double rollLength(Stencil stencil) {
    List<Panel> cut = cut(stencil);
    double spared =
        panels.stream().filter(p -> !cut.contains(p)).mapToDouble(p -> turn.along(p.box())).sum();
    return Math.max(0, rollLength - spared);
  }

  /** Film used for all these stencils, mm of roll. */
  public double rollLength(Collection<Stencil> stencils) {
    return stencils.stream().mapToDouble(this::rollLength).sum();
  }

  /** The registration ticks that lie on a panel. */
  public List<RegistrationTick> ticks(Panel panel) {
    Bounds inside = panel.box().grown(-RegistrationTick.ARM);
    return ticks.stream().filter(t -> inside.contains(t.at())).toList();
  }
}
