package slabwright.inlay.stencil;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import slabwright.shape.Arcs;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.shape.near.BoxIndex;

/**
 * Offers to mend what {@link StencilCheck} finds. Each takes openings and returns changed ones, in
 * the same frame; nothing is changed until a person takes the offer.
 */
final class StencilFixOp {
  private static final double ARC_TOLERANCE = 0.02;

  /** Discs stand a third of the width apart; this much larger, their union has no waist. */
  private static final double COVER = 1.08;

  /**
   * Corners this much blunter, degrees, are rounded too, so that rounding on the grid hides none.
   */
  private static final double SURE = 0.5;

  /** No wider than this at its foot a point is a hair, mm. */
  private static final double HAIR = 0.005;

  private static final int MOST_ROUNDS = 12;

  private StencilFixOp() {}

  /**
   * Widens vinyl thinner than {@code width} to it. What is added may come near to other vinyl and
   * leave a new neck there, so it is looked at again until none is left.
   */
  static Region widenVinyl(Region openings, Bounds blank, double width) {
    Region now = openings;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Region mask = Region.rectangle(blank).minus(now);
      if (ThinPlaceFinder.in(mask, width).isEmpty()) {
        return now;
      }
      now = thickenMask(now, mask, width);
    }
    return now;
  }

  /** Opens loose pieces of the vinyl smaller than {@code area} mm², so that they are dyed too. */
  static Region fillLoose(Region openings, Bounds blank, double area) {
    List<Region> small =
        Region.rectangle(blank).minus(openings).parts().stream()
            .filter(p -> p.area() < area && !TiePlan.reachesRim(p.bounds(), blank))
            .toList();
    return small.isEmpty() ? openings : openings.union(Region.union(small));
  }

  /** Widens the mask between openings to {@code width} wherever it is thinner. */
  public static Region thickenMask(Region openings, Region mask, double width) {
    Region added =
        Region.union(
            ThinPlaceFinder.discs(mask, width).stream()
                .map(b -> Arcs.circle(b.centre(), COVER * width / 2, ARC_TOLERANCE))
                .map(Region::of)
                .toList());
    return openings.minus(added);
  }

  /** Leaves out openings smaller than {@code area} mm². */
  public static Region dropScraps(Region openings, double area) {
    return Region.union(openings.parts().stream().filter(p -> p.area() >= area).toList());
  }

  /**
   * Rounds points of the openings sharper than {@code degrees} to {@code radius}, no others. What
   * is left on the grid beside a point cut off may be a point itself, a hair wide, so it is looked
   * at again until none is left.
   */
  public static Region roundNeedles(Region openings, double degrees, double radius) {
    Region now = openings;
    double bluntest = degrees + SURE;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      List<SharpCorner> needles = SharpCornerFinder.sharper(now, bluntest);
      if (needles.isEmpty()) {
        return now;
      }
      now = withoutTips(now, needles, radius);
      bluntest = degrees;
    }
    return now;
  }

  private static Region withoutTips(Region openings, List<SharpCorner> needles, double radius) {
    Region tips = openings.minus(openings.opened(radius, ARC_TOLERANCE));
    BoxIndex<SharpCorner> ends = BoxIndex.of(needles, SharpCorner::at);
    Set<Region> cut =
        tips.parts().stream()
            .filter(t -> ends.any(t.bounds().grown(1), n -> t.distanceTo(n.at()) < 1e-6))
            .collect(Collectors.toSet());
    return shaved(openings.minus(Region.union(cut)));
  }

  /** Without hairs: they have no area on the grid that could be taken away, only a tip. */
  private static Region shaved(Region region) {
    Set<Vec> tips =
        SharpCornerFinder.sharper(region, SURE).stream()
            .filter(n -> n.side() * Math.sin(Math.toRadians(n.degrees())) <= HAIR)
            .map(SharpCorner::at)
            .collect(Collectors.toSet());
    if (tips.isEmpty()) {
      return region;
    }
    List<Ring> rings =
        region.rings().stream()
            .map(r -> new Ring(r.points().stream().filter(p -> !tips.contains(p)).toList()))
            .toList();
    return Region.of(rings, FillRule.NONZERO);
  }
}
