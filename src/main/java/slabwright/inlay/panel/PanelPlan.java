package slabwright.inlay.panel;

import java.util.List;
import slabwright.inlay.stencil.Finding;
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
 * @param rollLength film used for one stencil, mm
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
    double rollLength,
    double waste,
    SeamCost cost,
    List<Finding> findings) {
  public PanelPlan {
    seams = List.copyOf(seams);
    panels = List.copyOf(panels);
    layingOrder = List.copyOf(layingOrder);
    laps = List.copyOf(laps);
    findings = List.copyOf(findings);
  }
}
