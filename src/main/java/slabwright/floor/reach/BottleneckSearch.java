package slabwright.floor.reach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import slabwright.floor.FloorArrangement;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.GrindingOp;
import slabwright.floor.HandWorkPiece;
import slabwright.floor.MachineReach;
import slabwright.floor.ReachedFloor;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Machine;
import slabwright.units.Length;

/**
 * Questions about widths: which machine would get where. Each answer works out reach several times,
 * so ask off the screen's thread.
 */
final class BottleneckSearch {
  /** Gaps narrower than twice this let no machine through, mm. */
  private static final double LEAST_HALF = 20;

  /** The search ends when the half width is known to this, mm. */
  private static final double EXACT = 0.25;

  /** So many of the nearest narrow places are tried as the one that decides. */
  static final int TRIED = 12;

  /** So many times the widest body's half width about a pocket is looked at first. */
  private static final double NEAR = 4;

  /** Then so many times as far. */
  private static final double FARTHER = 3;

  private final FloorTakeoff takeoff;
  private final Region grindable;
  private final MachineReach reach;
  private final BooleanSupplier cancelled;
  private final boolean levelled;
  private final PassFloor whole;

  /** What was found; there may be no way. */
  private record Found(Optional<Bottleneck> narrowest) {}

  /** Over a floor as it was found, or with its trenches levelled. */
  public BottleneckSearch(FloorTakeoff takeoff, boolean levelled) {
    this(takeoff, levelled, () -> false);
  }

  /** The same; every answer ends with a CancellationException once {@code cancelled} is true. */
  public BottleneckSearch(FloorTakeoff takeoff, boolean levelled, BooleanSupplier cancelled) {
    this.takeoff = takeoff;
    this.levelled = levelled;
    this.cancelled = cancelled;
    FloorArrangement plan = new FloorArrangement(takeoff.area(), takeoff.tolerance(), cancelled);
    GrindingOp grinder = new GrindingOp(plan, levelled, takeoff.tolerance(), cancelled);
    reach = grinder.reach();
    whole = new WholeFloor(reach, takeoff.tolerance(), cancelled);
    grindable = grinder.grindable();
  }

  /**
   * The narrowest place on the widest way to a pocket's middle; empty when no way of 40 mm or more
   * leads there. A body gets there when it covers the middle. Of several equal places the nearest
   * to the pocket counts.
   *
   * <p>The floor about the pocket is asked first, then more of it, and all of it only where the way
   * there is longer than that.
   */
  public Optional<Bottleneck> findBottleneck(HandWorkPiece pocket) {
    Vec place = pocket.place();
    double widest = widestHalf();
    double reaches = Math.max(takeoff.gross().bounds().width(), takeoff.gross().bounds().height());
    for (double out = NEAR * widest; out < reaches / 2; out *= FARTHER) {
      Bounds box = Bounds.of(List.of(place)).grown(out);
      Optional<Found> found =
          find(new NearFloor(reach, reaches(), box, widest, takeoff.tolerance()), place, widest);
      if (found.isPresent()) {
        return found.get().narrowest;
      }
    }
    return find(whole, place, widest).orElseThrow().narrowest;
  }

  private List<ReachedFloor> reaches() {
    return levelled ? takeoff.levelled().reaches() : takeoff.asFound().reaches();
  }

  /** The same asked of one floor; empty where it can't tell. */
  private Optional<Found> find(PassFloor floor, Vec place, double widest) {
    double low = LEAST_HALF;
    double high = widest;
    Optional<Boolean> least = floor.serves(low, place);
    if (!least.orElse(false)) {
      return least.map(none -> new Found(Optional.empty()));
    }
    while (high - low > EXACT) {
      if (cancelled.getAsBoolean()) {
        throw new CancellationException();
      }
      double middle = (low + high) / 2;
      Optional<Boolean> serves = floor.serves(middle, place);
      if (serves.isEmpty()) {
        return Optional.empty();
      }
      low = serves.get() ? middle : low;
      high = serves.get() ? high : middle;
    }
    double width = 2 * low;
    return floor
        .neck(low, high, place)
        .flatMap(at -> floor.nearestObstacle(at).map(side -> pass(width, at, side)))
        .map(p -> new Found(Optional.of(p)));
  }

  private static Bottleneck pass(double width, Vec where, Vec side) {
    Vec over = side.equals(where) ? new Vec(1, 0) : where.minus(side).unit();
    return new Bottleneck(width, where, Line.of(side, side.plus(over.times(width))));
  }

  /** No machine of the plan gets to a pocket; without one no body wider than the floor fits. */
  private double widestHalf() {
    return takeoff.area().machines().stream()
        .mapToDouble(m -> Math.max(MachineReach.half(m), m.passage() / 2))
        .max()
        .orElse(
            Math.max(takeoff.gross().bounds().width(), takeoff.gross().bounds().height()) / 2
                + LEAST_HALF);
  }

  /** Reach for bodies of several widths; head and clearance keep their difference to the body. */
  public List<ReachPoint> curve(Machine like, List<Double> bodies) {
    List<ReachPoint> points = new ArrayList<>();
    for (double body : bodies) {
      points.add(point(like, body));
    }
    return points;
  }

  /** One point of the curve. */
  ReachPoint point(Machine like, double body) {
    if (cancelled.getAsBoolean()) {
      throw new CancellationException();
    }
    double rim = like.body().mm() - like.grinding().mm();
    Length head = Length.mm(Math.max(0, body - rim));
    Machine machine =
        new Machine(like.id(), like.name(), Length.mm(body), head, like.clearance())
            .withTravel(like.travel().withLength(Optional.empty()));
    double ground = reach.head(machine).intersectLarge(grindable).area();
    return new ReachPoint(body, ground, takeoff.ground().area() - ground);
  }
}
