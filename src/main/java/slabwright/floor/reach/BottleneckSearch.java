package slabwright.floor.reach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import slabwright.floor.FloorArrangement;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.GrindingOp;
import slabwright.floor.HandWorkPiece;
import slabwright.floor.MachineReach;
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
  private static final int TRIED = 12;

  private final FloorTakeoff takeoff;
  private final Region grindable;
  private final MachineReach reach;
  private final BooleanSupplier cancelled;
  private final Map<Double, Region> middles = new HashMap<>();
  private final Map<Double, List<Region>> narrows = new HashMap<>();

  /** Over a floor as it was found, or with its trenches levelled. */
  public BottleneckSearch(FloorTakeoff takeoff, boolean levelled) {
    this(takeoff, levelled, () -> false);
  }

  /** The same; every answer ends with a CancellationException once {@code cancelled} is true. */
  public BottleneckSearch(FloorTakeoff takeoff, boolean levelled, BooleanSupplier cancelled) {
    this.takeoff = takeoff;
    this.cancelled = cancelled;
    FloorArrangement plan = new FloorArrangement(takeoff.area(), takeoff.tolerance(), cancelled);
    GrindingOp grinder = new GrindingOp(plan, levelled, takeoff.tolerance(), cancelled);
    reach = grinder.reach();
    grindable = grinder.grindable();
  }

  /**
   * The narrowest place on the widest way to a pocket's middle; empty when no way of 40 mm or more
   * leads there. A body gets there when it covers the middle. Of several equal places the nearest
   * to the pocket counts.
   */
  public Optional<Bottleneck> findBottleneck(HandWorkPiece pocket) {
    Vec place = pocket.place();
    double low = LEAST_HALF;
    double high = widestHalf();
    if (!serves(low, place)) {
      return Optional.empty();
    }
    while (high - low > EXACT) {
      double middle = (low + high) / 2;
      if (serves(middle, place)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Optional.of(pass(2 * low, neck(low, high, place)));
  }

  private Bottleneck pass(double width, Vec where) {
    Vec side = reach.nearestObstacle(where);
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

  private boolean serves(double half, Vec place) {
    return covers(middle(half), half, place);
  }

  private boolean covers(Region middle, double half, Vec place) {
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
  private Vec neck(double low, double high, Vec place) {
    Region passes = middle(low);
    return narrows.computeIfAbsent(high, h -> narrows(passes, h - low, h)).stream()
        .sorted(Comparator.comparingDouble(p -> p.distanceTo(place)))
        .limit(TRIED)
        .filter(n -> shuts(n, passes, low, place))
        .findFirst()
        .map(Region::labelPoint)
        .orElseGet(() -> passes.nearestOnBoundary(place));
  }

  /** Kept too: pockets behind one gap end with the same widths, {@code high} the wider of them. */
  private List<Region> narrows(Region passes, double between, double high) {
    Region wider = reach.anywhere(high).offset(2 * between + 2 * takeoff.tolerance(), 0.5);
    return passes.minus(wider).parts();
  }

  private boolean shuts(Region neck, Region passes, double half, Vec place) {
    Region rest = passes.minus(neck.offset(1, 0.5));
    return !covers(reach.fromWayIn(rest, half), half, place);
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
    double ground = reach.head(machine).intersect(grindable).area();
    return new ReachPoint(body, ground, takeoff.ground().area() - ground);
  }
}
