package slabwright.floor.reach;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.floor.MachineReach;
import slabwright.floor.ReachedFloor;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * The floor in a box about a place. It can tell whether a body gets there when the way ends within
 * the box: at a way in, or where the take-off's machines roll, which are at least as wide. A way
 * that runs out of the box leaves it open.
 */
final class NearFloor implements PassFloor {
  /** A region that comes so near to a side of the box may run on beyond it, mm. */
  private static final double AT_SIDE = 0.01;

  private final MachineReach reach;
  private final Bounds box;
  private final Bounds window;
  private final Region inside;
  private final List<Rolled> rolled;
  private final double tolerance;

  /** Where a body of the half width surely gets to. */
  private record Rolled(double half, Region rolls) {}

  /**
   * A floor in a box.
   *
   * @param widest the half width of the widest body that is asked about, mm
   */
  NearFloor(
      MachineReach whole, List<ReachedFloor> reaches, Bounds box, double widest, double tolerance) {
    this.box = box;
    this.tolerance = tolerance;
    window = box.grown(3 * widest + 10);
    inside = Region.rectangle(box);
    reach = whole.about(window);
    rolled =
        reaches.stream()
            .map(r -> new Rolled(r.machine().passage() / 2, r.rolls().about(box).intersect(inside)))
            .sorted(Comparator.comparingDouble(Rolled::half))
            .toList();
  }

  @Override
  public Optional<Boolean> serves(double half, Vec place) {
    return covers(fits(half), half, place);
  }

  private Region fits(double half) {
    return reach.anywhere(half).intersect(inside);
  }

  private Optional<Boolean> covers(Region fits, double half, Vec place) {
    boolean open = false;
    for (Region part : fits.parts()) {
      if (part.distanceTo(place) <= half) {
        if (isReached(part, half)) {
          return Optional.of(true);
        }
        open |= isAtSide(part.bounds());
      }
    }
    return open ? Optional.empty() : Optional.of(false);
  }

  private boolean isReached(Region part, double half) {
    return rolled.stream()
            .filter(r -> r.half >= half)
            .findFirst()
            .filter(r -> r.rolls.meets(part))
            .isPresent()
        || !reach.fromWayIn(part, half).isEmpty();
  }

  private boolean isAtSide(Bounds b) {
    return b.minX() < box.minX() + AT_SIDE
        || b.minY() < box.minY() + AT_SIDE
        || b.maxX() > box.maxX() - AT_SIDE
        || b.maxY() > box.maxY() - AT_SIDE;
  }

  @Override
  public Optional<Vec> neck(double low, double high, Vec place) {
    Region near = fits(low).partsWhere(part -> part.distanceTo(place) <= low);
    Region passes = near.partsWhere(part -> isReached(part, low));
    if (near.parts().stream().anyMatch(p -> isAtSide(p.bounds()) && !isReached(p, low))) {
      return Optional.empty();
    }
    Region wider = reach.anywhere(high).offset(2 * (high - low) + 2 * tolerance, 0.5);
    List<Region> narrows =
        passes.minus(wider).parts().stream()
            .sorted(Comparator.comparingDouble(p -> p.distanceTo(place)))
            .limit(BottleneckSearch.TRIED)
            .toList();
    for (Region narrow : narrows) {
      Optional<Boolean> way = covers(passes.minus(narrow.offset(1, 0.5)), low, place);
      if (way.isEmpty() || (!way.get() && isAtSide(narrow.bounds()))) {
        return Optional.empty();
      }
      if (!way.get()) {
        return Optional.of(narrow.labelPoint());
      }
    }
    Vec deepest = passes.nearestOnBoundary(place);
    return Optional.of(deepest).filter(p -> !isAtSide(Bounds.of(List.of(p))));
  }

  @Override
  public Optional<Vec> nearestObstacle(Vec where) {
    Vec nearest = reach.nearestObstacle(where);
    return Optional.of(nearest).filter(p -> isSurelyNearest(p.distanceTo(where), where));
  }

  private boolean isSurelyNearest(double distance, Vec where) {
    return window.contains(where)
        && distance < Math.min(where.x() - window.minX(), window.maxX() - where.x())
        && distance < Math.min(where.y() - window.minY(), window.maxY() - where.y());
  }
}
