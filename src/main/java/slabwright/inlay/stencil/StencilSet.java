package slabwright.inlay.stencil;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * All stencils of one inlay, on blanks of one size so that they lie in the same place.
 *
 * @param blank from (0, 0) to the blank's width and height in mm
 * @param origin the blank's top-left corner in the graphic's frame
 * @param stencils in laying order
 * @param openings where any stencil is open
 * @param changes what accepted fixes changed, stencil by stencil
 * @param findings what the person should know
 */
public record StencilSet(
    Bounds blank,
    Vec origin,
    List<Stencil> stencils,
    Region openings,
    List<FixEffect> changes,
    List<Finding> findings) {
  public StencilSet {
    changes = List.copyOf(changes);
    stencils = List.copyOf(stencils);
    findings = List.copyOf(findings);
  }

  /**
   * Makes the stencils of colours given in laying order.
   *
   * @param layers disjoint colour regions in the graphic's frame, x right, y down, in mm
   * @param rules margin, spread and the like
   */
  public static StencilSet of(List<DyeLayer> layers, StencilParameters rules) {
    return new StencilSetBuilder(layers, rules).make();
  }

  /** Where any dye shall reach. */
  public Region wanted() {
    return together(stencils.stream().map(Stencil::wanted).toList());
  }

  /** The set of these stencils. */
  public static StencilSet of(
      Bounds blank,
      Vec origin,
      List<Stencil> stencils,
      List<FixEffect> changes,
      List<Finding> findings) {
    Region open = together(stencils.stream().map(Stencil::openings).toList());
    return new StencilSet(blank, origin, stencils, open, changes, findings);
  }

  private static Region together(List<Region> regions) {
    return regions.size() == 1 ? regions.get(0) : Region.union(regions);
  }

  /** Cut length of all stencils in mm. */
  public double cutLength() {
    return stencils.stream().mapToDouble(Stencil::cutLength).sum();
  }

  /** Loose pieces of all stencils. */
  public int looseCount() {
    return stencils.stream().mapToInt(s -> s.loosePieces().size()).sum();
  }

  /** From the graphic's frame to the blank's. */
  public Affine fromGraphic() {
    return Affine.move(-origin.x(), -origin.y());
  }

  /** The same set with some stencils cut out of other blanks. */
  public StencilSet with(List<Stencil> changed) {
    return with(changed, List.of());
  }

  /** The same set with some stencils replaced and findings added. */
  StencilSet with(List<Stencil> changed, List<Finding> more) {
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(more);
    return of(blank, origin, changed, changes, all);
  }
}
