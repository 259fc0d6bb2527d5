package slabwright.work;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.inlay.PlacedInlay;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Site;
import slabwright.units.UnitSystem;

/**
 * All that is computed of one floor area; what every door shows.
 *
 * @param ways the machines' ways over the floor, worked out when they are asked for
 * @param refused inlays that could not be computed, with the reason
 */
public record AreaResult(
    FloorTakeoff takeoff,
    ReachAnalysis ways,
    List<PlacedInlay> inlays,
    List<PlacedInlay.Placing.Refused> refused) {
  public AreaResult {
    inlays = List.copyOf(inlays);
    refused = List.copyOf(refused);
  }

  /** A result of a take-off and its inlays. */
  public AreaResult(
      FloorTakeoff takeoff, List<PlacedInlay> inlays, List<PlacedInlay.Placing.Refused> refused) {
    this(takeoff, ReachAnalysis.of(takeoff), inlays, refused);
  }

  /**
   * Computes every area of a site.
   *
   * @param folder that graphics are relative to
   * @throws IOException when a graphic breaks while it is read
   * @throws java.util.concurrent.CancellationException when {@code cancelled} turned true
   */
  public static List<AreaResult> of(Site site, Path folder, BooleanSupplier cancelled)
      throws IOException {
    List<AreaResult> all = new ArrayList<>();
    for (FloorArea area : site.areas()) {
      all.add(of(area, site.units(), folder, cancelled));
    }
    return all;
  }

  private static AreaResult of(
      FloorArea area, UnitSystem units, Path folder, BooleanSupplier cancelled) throws IOException {
    FloorTakeoff takeoff = FloorTakeoff.of(area, FloorTakeoff.TOLERANCE, cancelled);
    List<PlacedInlay> inlays = new ArrayList<>();
    List<PlacedInlay.Placing.Refused> refused = new ArrayList<>();
    for (Inlay inlay : area.inlays()) {
      PlacedInlay.Placing placing =
          PlacedInlay.of(inlay, folder.resolve(inlay.graphic()), takeoff, units);
      if (placing instanceof PlacedInlay.Placing.Done done) {
        inlays.add(done.placed());
      } else if (placing instanceof PlacedInlay.Placing.Refused r) {
        refused.add(r);
      }
    }
    return new AreaResult(takeoff, inlays, refused);
  }
}
