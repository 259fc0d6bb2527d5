package slabwright.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Region;
import slabwright.site.Machine;
import slabwright.units.Length;

/**
 * Questions about widths: which machine would get where. Each answer works out reach several times,
 * so ask off the screen's thread.
 */
public final class Passage {
  /** Gaps narrower than this let no machine through, mm. */
  private static final double LEAST_HALF = 20;

  /** The search ends when the half width is known to this, mm. */
  private static final double EXACT = 0.25;

  private final FloorTakeoff takeoff;
  private final Grinder grinder;
  private final MachineReach reach;
  private final boolean levelled;

  /** Over a floor as it was found, or with its trenches levelled. */
  public Passage(FloorTakeoff takeoff, boolean levelled) {
    this.takeoff = takeoff;
    this.levelled = levelled;
    Plan plan = new Plan(takeoff.area(), takeoff.tolerance(), () -> false);
    grinder = new Grinder(plan, takeoff.tolerance(), () -> false);
    reach = grinder.reach(levelled);
  }

  /**
   * The narrowest place on the widest way to a pocket; empty when no way of 40 mm or more leads
   * there.
   */
  public Optional<Pass> narrowest(HandPiece pocket) {
    double low = LEAST_HALF;
    double high = widestHalf(pocket);
    if (!serves(low, pocket)) {
      return Optional.empty();
    }
    while (high - low > EXACT) {
      double middle = (low + high) / 2;
      if (serves(middle, pocket)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Optional.of(new Pass(2 * low, neck(low, high, pocket).labelPoint()));
  }

  /** No body wider than the floor fits, whatever the plan's machines are. */
  private double widestHalf(HandPiece pocket) {
    return takeoff.area().machines().stream()
        .mapToDouble(MachineReach::half)
        .max()
        .orElse(
            Math.max(
                LEAST_HALF,
                Math.max(pocket.region().bounds().width(), pocket.region().bounds().height())));
  }

  private boolean serves(double half, HandPiece pocket) {
    return reach.middle(half).meets(pocket.region());
  }

  /** What a slightly narrower machine passes and a slightly wider one does not. */
  private Region neck(double low, double high, HandPiece pocket) {
    Region wider = reach.anywhere(high).offset(2 * (high - low) + 2 * takeoff.tolerance(), 0.5);
    return reach.middle(low).minus(wider).parts().stream()
        .min(Comparator.comparingDouble(p -> pocket.region().distanceTo(p.labelPoint())))
        .orElse(pocket.region());
  }

  /** Reach for bodies of several widths; head and clearance keep their difference to the body. */
  public List<ReachPoint> curve(Machine like, List<Double> bodies) {
    double rim = like.body().mm() - like.grinding().mm();
    List<ReachPoint> points = new ArrayList<>();
    for (double body : bodies) {
      Length head = Length.mm(Math.max(0, body - rim));
      Machine machine =
          new Machine(like.id(), like.name(), Length.mm(body), head, like.clearance());
      double ground = grinder.ground(machine, levelled).area();
      points.add(new ReachPoint(body, ground, takeoff.ground().area() - ground));
    }
    return points;
  }
}
