package slabwright.project;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.InlayCache;
import slabwright.inlay.PlacedInlay;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Site;
import slabwright.units.Recent;
import slabwright.units.UnitSystem;
import slabwright.work.AreaResult;

/**
 * Floor areas computed, for as long as one plan is worked on: an area that an edit left as it was
 * isn't taken off again, and an inlay only when something that it depends on has changed.
 */
public final class AreaCache {
  private static final int ROOM = 16;

  private final Recent<FloorArea, FloorTakeoff> takeoffs = new Recent<>(ROOM);
  private final InlayCache inlays = new InlayCache();

  /**
   * The take-off within the usual tolerance.
   *
   * @throws java.util.concurrent.CancellationException when {@code cancelled} turned true
   */
  public FloorTakeoff takeoff(FloorArea area, BooleanSupplier cancelled) {
    return takeoffs.get(area, () -> FloorTakeoff.of(area, FloorTakeoff.TOLERANCE, cancelled));
  }

  /**
   * An inlay on its floor.
   *
   * @param folder that its graphic is relative to
   * @throws IOException when the graphic breaks while it is read
   */
  public PlacedInlay.Placing place(Inlay inlay, Path folder, FloorTakeoff takeoff, UnitSystem units)
      throws IOException {
    return inlays.place(inlay, folder.resolve(inlay.graphic()), takeoff, units);
  }

  /**
   * Every area of a site.
   *
   * @param folder that graphics are relative to
   * @throws IOException when a graphic breaks while it is read
   * @throws java.util.concurrent.CancellationException when {@code cancelled} turned true
   */
  public List<AreaResult> of(Site site, Path folder, BooleanSupplier cancelled) throws IOException {
    List<AreaResult> all = new ArrayList<>();
    for (FloorArea area : site.areas()) {
      all.add(of(area, site.units(), folder, cancelled));
    }
    return all;
  }

  /** One area of a site. */
  AreaResult of(FloorArea area, UnitSystem units, Path folder, BooleanSupplier cancelled)
      throws IOException {
    FloorTakeoff takeoff = takeoff(area, cancelled);
    List<PlacedInlay> done = new ArrayList<>();
    List<PlacedInlay.Placing.Refused> refused = new ArrayList<>();
    for (Inlay inlay : area.inlays()) {
      PlacedInlay.Placing placing = place(inlay, folder, takeoff, units);
      if (placing instanceof PlacedInlay.Placing.Done d) {
        done.add(d.placed());
      } else if (placing instanceof PlacedInlay.Placing.Refused r) {
        refused.add(r);
      }
    }
    return new AreaResult(takeoff, done, refused);
  }

  /** Forgets the inlays, as after a graphic changed on disk. */
  public void forgetGraphics() {
    inlays.clear();
  }
}
