package slabwright.desk.tool;

import java.util.List;
import java.util.Optional;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.desk.model.scene.PaleFloor;
import slabwright.desk.model.scene.SeamGrip;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.Inlay;
import slabwright.units.Message;

/** What is on the slab now, worked out. */
public interface PlanLookup {
  /** The floor area's picture, once it has been worked out. */
  Optional<FloorPicture> picture();

  /** The floor areas beside it. */
  List<PaleFloor> others();

  /** The inlay that covers the point. */
  Optional<PlanItem> inlayAt(Vec p);

  /** The corners of an inlay's blank on the site, from its top left as read. */
  List<Vec> inlayCorners(String id);

  /** The seams of all inlays that have been worked out. */
  List<SeamGrip> seams();

  /** What the seams of an inlay cost, in a few words. */
  Message seamCost(Inlay inlay);

  /** What an inlay covers on the site. */
  Optional<Bounds> inlayBounds(String id);
}
