package slabwright.desk.tool.select;

import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.Stage;
import slabwright.desk.model.scene.SeamGrip;
import slabwright.desk.tool.PlanLookup;
import slabwright.desk.tool.Tool.Drag;
import slabwright.desk.tool.Touch;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.edit.Edit;

/** A seam of an inlay slid across its strips. */
record SeamDrag(FloorArea area, Inlay inlay, SeamGrip grip, int seam, Vec start) implements Drag {
  /** The seam under the touch, on the Inlay stage. */
  static Optional<SeamDrag> at(DeskContext bench, PlanLookup shown, Touch t) {
    Optional<FloorArea> area = bench.focus().area();
    if (bench.focus().stage() != Stage.INLAY || area.isEmpty()) {
      return Optional.empty();
    }
    for (SeamGrip grip : shown.seams()) {
      Optional<Integer> hit = grip.at(t.raw(), t.reach() * 0.7);
      Optional<Inlay> inlay = area.get().inlay(grip.inlayId());
      if (hit.isPresent() && inlay.isPresent()) {
        return Optional.of(new SeamDrag(area.get(), inlay.get(), grip, hit.get(), t.raw()));
      }
    }
    return Optional.empty();
  }

  @Override
  public Optional<Edit> to(Touch t) {
    if (t.raw().distanceTo(start) < t.reach() / 3) {
      return Optional.empty();
    }
    return Optional.of(SeamNudge.edit(area, inlay, grip.through(seam, t.raw())));
  }
}
