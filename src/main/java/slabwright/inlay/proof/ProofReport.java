package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Affine;
import slabwright.shape.Region;
import slabwright.units.Message;

/**
 * All that was found, and the picture of it. Regions are in the blank's frame.
 *
 * @param limits what it was judged by
 * @param panels names of the panels found in the drawing, in the plan's order
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
    faults = PanelLabels.paired(faults);
    notes = List.copyOf(notes);
    poses = List.copyOf(poses);
  }

  /** Intersection over union; the union by areas, since it takes as long as the intersection. */
  static double overlap(Region plan, Region drawn) {
    double both = plan.intersect(drawn).area();
    return both / (plan.area() + drawn.area() - both);
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

  /** The verdict in a sentence; of a panel that came back alone it says which. */
  public Message message() {
    Optional<String> alone =
        notes.stream()
            .filter(n -> n instanceof ProofNote.OnePanelAlone)
            .map(n -> ((ProofNote.OnePanelAlone) n).panel())
            .findFirst();
    return alone.isPresent() && verdict() == ProofVerdict.CUT
        ? Message.of("inlay.proof-verdict.cut-panel", alone.get())
        : verdict().message();
  }

  /** The same of a stencil whose panels have other names. */
  ProofReport of(List<String> names) {
    return new ProofReport(
        limits, names, faults, notes, figures, overlap, drawn, missing, added, poses);
  }

  /** The same with more to say, and labels that two panels exchanged said once. */
  ProofReport with(List<ProofFault> moreFaults, List<ProofNote> moreNotes) {
    List<ProofFault> allFaults = new ArrayList<>(faults);
    allFaults.addAll(moreFaults);
    List<ProofNote> allNotes = new ArrayList<>(notes);
    allNotes.addAll(moreNotes);
    return new ProofReport(
        limits, panels, allFaults, allNotes, figures, overlap, drawn, missing, added, poses);
  }

  /** Of what is wrong with all panels alike, the worst is said. */
  static List<ProofFault> onceEach(List<ProofFault> all) {
    List<ProofFault> once = new ArrayList<>();
    for (ProofFault f : all) {
      boolean everywhere =
          f.place().isEmpty()
              && !(f instanceof ProofFault.EdgeMissing || f instanceof LabelFault.LabelWrong);
      Optional<ProofFault> other =
          once.stream().filter(o -> everywhere && o.kind().equals(f.kind())).findFirst();
      if (other.isEmpty()) {
        once.add(f);
      } else if (other.get().sizeMm() < f.sizeMm()) {
        once.set(once.indexOf(other.get()), f);
      }
    }
    return once;
  }
}
