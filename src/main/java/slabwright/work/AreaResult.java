package slabwright.work;

import java.util.List;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.inlay.PlacedInlay;

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
}
