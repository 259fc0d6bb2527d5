package slabwright.floor.reach;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import slabwright.floor.MachineReach;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** All of a floor: it can always tell, and each width that is asked about costs a reach. */
final class WholeFloor implements PassFloor {
  private final MachineReach reach;
  private final double tolerance;
  private final BooleanSupplier cancelled;
  private final Map<Double, Region> middles = new HashMap<>();
  private final Map<Double, List<Region>> narrows = new HashMap<>();

  WholeFloor(MachineReach reach, double tolerance, BooleanSupplier cancelled) {
    this.reach = reach;
    this.tolerance = tolerance;
    this.cancelled = cancelled;
  }

  @Override
  public Optional<Boolean> serves(double half, Vec place) {
    return Optional.of(covers(middle(half), half, place));
  }

  private static boolean covers(Region middle, double half, Vec place) {
    return !middle.isEmpty() && middle.distanceTo(place) <= half;
  }

  /** Kept, since pockets behind one gap ask for the same widths. */
  private Region middle(double half) {
    if (cancelled.getAsBoolean()) {
      throw new CancellationException();
    }
    return middles.computeIfAbsent(half, reach::middle);
  }

  /**
   * The middle of what a slightly narrower body passes and a slightly wider one does not, of the
   * piece without which there is no way to the place. Without such a piece the body fits less and
   * less deep into a wedge: then as deep as it gets.
   */
  @Override
  public Optional<Vec> neck(double low, double high, Vec place) {
    Region passes = middle(low);
    Vec neck =
        narrows.computeIfAbsent(high, h -> narrows(passes, h - low, h)).stream()
            .sorted(Comparator.comparingDouble(p -> p.distanceTo(place)))
            .limit(BottleneckSearch.TRIED)
            .filter(n -> shuts(n, passes, low, place))
            .findFirst()
            .map(Region::labelPoint)
            .orElseGet(() -> passes.nearestOnBoundary(place));
    return Optional.of(neck);
  }

  /** Kept too: pockets behind one gap end with the same widths, {@code high} the wider of them. */
  private List<Region> narrows(Region passes, double between, double high) {
    Region wider = reach.anywhere(high).offset(2 * between + 2 * tolerance, 0.5);
    return passes.minus(wider).parts();
  }

  private boolean shuts(Region neck, Region passes, double half, Vec place) {
    Region rest = passes.minus(neck.offset(1, 0.5));
    return !covers(reach.fromWayIn(rest, half), half, place);
  }

  @Override
  public Optional<Vec> nearestObstacle(Vec where) {
    return Optional.of(reach.nearestObstacle(where));
  }
}
