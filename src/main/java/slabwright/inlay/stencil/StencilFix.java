package slabwright.inlay.stencil;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import slabwright.shape.Arcs;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * Offers to mend what {@link StencilCheck} finds. Each takes openings and returns changed ones, in
 * the same frame; nothing is changed until a person takes the offer.
 */
public final class StencilFix {
  private static final double ARC_TOLERANCE = 0.02;

  /** Discs stand a third of the width apart; this much larger, their union has no waist. */
  private static final double COVER = 1.08;

  private StencilFix() {}

  /** Widens the mask between openings to {@code width} wherever it is thinner. */
  public static Region thickenMask(Region openings, Region mask, double width) {
    Region added =
        Region.union(
            ThinPlaces.discs(mask, width).stream()
                .map(b -> Arcs.circle(b.centre(), COVER * width / 2, ARC_TOLERANCE))
                .map(Region::of)
                .toList());
    return openings.minus(added);
  }

  /** Leaves out openings smaller than {@code area} mm². */
  public static Region dropScraps(Region openings, double area) {
    return Region.union(openings.parts().stream().filter(p -> p.area() >= area).toList());
  }

  /** Rounds points of the openings sharper than {@code degrees} to {@code radius}, no others. */
  public static Region roundNeedles(Region openings, double degrees, double radius) {
    List<Vec> needles = Corners.sharper(openings, degrees);
    Region tips = openings.minus(openings.opened(radius, ARC_TOLERANCE));
    Set<Region> cut =
        tips.parts().stream()
            .filter(t -> needles.stream().anyMatch(n -> t.distanceTo(n) < 1e-6))
            .collect(Collectors.toSet());
    return openings.minus(Region.union(cut));
  }
}
