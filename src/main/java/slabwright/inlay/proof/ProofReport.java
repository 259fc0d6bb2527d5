package slabwright.inlay.proof;

import java.util.List;
import slabwright.shape.Affine;
import slabwright.shape.Region;

/**
 * All that was found, and the picture of it. Regions are in the blank's frame.
 *
 * @param limits what it was judged by
 * @param panels names of the panels that the stencil is cut in
 * @param figures how much the drawing differs, faults or not
 * @param overlap intersection over union of the drawing's openings and the plan's, once laid on
 *     each other; 1 is alike
 * @param drawn the drawing's openings, laid on the plan
 * @param missing where the plan is open and the drawing is not
 * @param added where the drawing is open and the plan is not
 * @param poses from the blank to the drawing: one, or one for each panel
 */
public record ProofReport(
    ProofLimits limits,
    List<String> panels,
    List<ProofFault> faults,
    List<ProofNote> notes,
    ProofFigures figures,
    double overlap,
    Region drawn,
    Region missing,
    Region added,
    List<Affine> poses) {
  public ProofReport {
    panels = List.copyOf(panels);
    faults = List.copyOf(faults);
    notes = List.copyOf(notes);
    poses = List.copyOf(poses);
  }

  /** What is said first. What is open is never a yes. */
  public ProofVerdict verdict() {
    if (!faults.isEmpty()) {
      return ProofVerdict.DO_NOT_CUT;
    }
    return notes.stream().anyMatch(ProofNote::isDoubt)
        ? ProofVerdict.CANNOT_TELL
        : ProofVerdict.CUT;
  }
}
