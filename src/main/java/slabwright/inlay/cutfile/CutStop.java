package slabwright.inlay.cutfile;

import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.OpenQuestions;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.stencil.Finding;
import slabwright.site.StencilSpec;
import slabwright.units.Message;

/**
 * Why an inlay must not go to the sign shop as it is.
 *
 * @param sentence what is wrong and what to do
 */
public record CutStop(Kind kind, Message sentence) {
  /** The kinds of reason, gravest first. */
  public enum Kind {
    /** The graphic on disk is not the one that was accepted. */
    CHANGED_ON_DISK,
    /** A check says that it can't be cut. */
    BLOCKED,
    /** Something about its colours is asked and not answered. */
    QUESTION,
    /** Letters are not drawn as the graphic asks; a person may accept them. */
    LETTERS
  }

  /** The stop for a graphic that is no longer what was accepted. */
  public static CutStop changedOnDisk(String inlay) {
    return new CutStop(Kind.CHANGED_ON_DISK, Message.of("inlay.cut-stop.changed-on-disk", inlay));
  }

  /** What the graphic and its plan say against cutting; empty when nothing does. */
  public static List<CutStop> of(String inlay, Artwork artwork, InlayPlan plan, StencilSpec spec) {
    List<CutStop> stops = new ArrayList<>();
    plan.findings().stream()
        .filter(f -> f.weight() == Finding.Weight.CANNOT)
        .map(f -> Message.of("inlay.cut-stop.no-cut-file", inlay, f.message()))
        .map(why -> new CutStop(Kind.BLOCKED, why))
        .forEach(stops::add);
    if (plan.panels().isEmpty() && stops.isEmpty()) {
      stops.add(new CutStop(Kind.BLOCKED, Message.of("inlay.cut-stop.no-panel-fits", inlay)));
    }
    OpenQuestions.of(artwork, spec).stream()
        .map(q -> Message.of("inlay.cut-stop.question", inlay, q.message()))
        .map(asked -> new CutStop(Kind.QUESTION, asked))
        .forEach(stops::add);
    artwork.warnings().stream()
        .filter(w -> w.kind().changesLetters())
        .map(
            w ->
                new CutStop(Kind.LETTERS, Message.of("inlay.cut-stop.letters", inlay, w.message())))
        .forEach(stops::add);
    return stops;
  }
}
