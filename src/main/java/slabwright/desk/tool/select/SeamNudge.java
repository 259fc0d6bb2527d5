package slabwright.desk.tool.select;

import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Stage;
import slabwright.desk.model.scene.SeamGrip;
import slabwright.desk.tool.PlanLookup;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.HandSeams;
import slabwright.site.Inlay;
import slabwright.site.edit.AreaEdit;
import slabwright.site.edit.Edit;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.Message;

/** The picked seam, moved a step at a time; only where seams are seen. */
public final class SeamNudge {
  private SeamNudge() {}

  /** Whether a seam is picked, so that arrow keys move it and nothing else. */
  public static boolean isPicked(DeskContext bench) {
    return picked(bench).isPresent();
  }

  private static Optional<PlanItem.OfSeam> picked(DeskContext bench) {
    return bench
        .focus()
        .single()
        .filter(p -> bench.focus().stage() == Stage.INLAY)
        .filter(PlanItem.OfSeam.class::isInstance)
        .map(PlanItem.OfSeam.class::cast);
  }

  /** The seams of the inlay whose seam is picked, once they have been worked out. */
  static Optional<SeamGrip> grip(DeskContext bench, PlanLookup shown) {
    return picked(bench)
        .flatMap(
            p ->
                shown.seams().stream()
                    .filter(g -> g.inlayId().equals(p.inlay()))
                    .filter(g -> p.index() < g.seams().places().size())
                    .findFirst());
  }

  /** Where the picked seam runs and what that costs; empty while none is. */
  static Optional<Message> standing(DeskContext bench, PlanLookup shown) {
    Optional<SeamGrip> grip = grip(bench, shown);
    Optional<Inlay> inlay = inlay(bench);
    if (grip.isEmpty() || inlay.isEmpty()) {
      return Optional.empty();
    }
    int i = index(bench);
    Length at = grip.get().seams().places().get(i);
    String words = LengthFormat.show(at, bench.desk().shown().units());
    return Optional.of(
        Message.of("desk.tool.select.seam", i + 1, words, shown.seamCost(inlay.get())));
  }

  /** The inlay whose seam is picked. */
  private static Optional<Inlay> inlay(DeskContext bench) {
    return picked(bench).flatMap(p -> bench.focus().area().flatMap(a -> a.inlay(p.inlay())));
  }

  /** The number of the picked seam. */
  static int index(DeskContext bench) {
    return picked(bench).orElseThrow().index();
  }

  /**
   * Moves it; empty when an arrow along the seam leaves it where it is.
   *
   * @param way of the arrow on the site
   */
  public static Optional<Edit> by(DeskContext bench, PlanLookup shown, Vec way, double step) {
    Optional<SeamGrip> grip = grip(bench, shown);
    Optional<Inlay> inlay = inlay(bench);
    if (grip.isEmpty() || inlay.isEmpty()) {
      return Optional.empty();
    }
    HandSeams moved = grip.get().nudged(index(bench), way, step);
    FloorArea area = bench.focus().area().orElseThrow();
    return moved.equals(grip.get().seams())
        ? Optional.empty()
        : Optional.of(edit(area, inlay.get(), moved));
  }

  /** The edit that sets an inlay's seams. */
  static Edit edit(FloorArea area, Inlay inlay, HandSeams seams) {
    return new AreaEdit.SetStencil(
        area.id(),
        inlay.id(),
        Message.of("desk.tool.seam-nudge.move-seam"),
        inlay.spec().withChanges(inlay.spec().changes().withSeams(Optional.of(seams))));
  }
}
