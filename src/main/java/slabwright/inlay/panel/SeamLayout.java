package slabwright.inlay.panel;

import java.util.List;
import slabwright.inlay.stencil.Finding;

/** Seams across the blank, the strips between them, and what all of it costs. */
record SeamLayout(
    StripDirection turn,
    List<Double> seams,
    List<Strip> strips,
    SeamCost cost,
    List<Finding> findings) {
  SeamLayout {
    seams = List.copyOf(seams);
    strips = List.copyOf(strips);
    findings = List.copyOf(findings);
  }
}
