package slabwright.inlay.stencil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.units.LengthFormat;
import slabwright.units.Quantity;
import slabwright.units.UnitSystem;

/** Looks at a stencil before it is cut: what will lift, tear or get lost, and where. */
public final class StencilCheck {
  private static final int MOST_OF_A_KIND = 12;

  private final StencilLimits limits;
  private final UnitSystem units;
  private final List<Finding> findings = new ArrayList<>();

  /**
   * Sets up the check.
   *
   * @param units in which sizes are written
   */
  public StencilCheck(StencilLimits limits, UnitSystem units) {
    this.limits = limits;
    this.units = units;
  }

  /** What is to be seen, with places in the blank's frame; at most a dozen of each kind. */
  public List<Finding> of(Stencil stencil) {
    findings.clear();
    list(
        ThinPlaces.in(stencil.mask(), limits.mask()),
        p -> narrow("Mask %s thin; the film holds %s.", p, limits.mask()).offering(Fix.WIDEN_VINYL),
        "places like that");
    list(
        ThinPlaces.in(stencil.openings(), limits.opening()),
        p -> narrow("Opening %s narrow; the least that weeds clean is %s.", p, limits.opening()),
        "places like that");
    small(stencil);
    list(
        Corners.sharper(stencil.mask(), limits.needle()),
        n -> needle("vinyl", n, limits.mask()),
        "needle points of vinyl");
    list(
        Corners.sharper(stencil.openings(), limits.needle()),
        n -> needle("opening", n, limits.opening()).offering(Fix.ROUND_NEEDLES),
        "needle points of opening");
    return List.copyOf(findings);
  }

  private void small(Stencil stencil) {
    Comparator<Region> smallestFirst = Comparator.comparingDouble(Region::area);
    list(
        stencil.loosePieces().stream()
            .map(LoosePiece::region)
            .filter(r -> r.area() < limits.loosePiece())
            .sorted(smallestFirst)
            .toList(),
        r ->
            bit("Loose piece of %s, so small that it may not hold on the tape.", r, Fix.DROP_LOOSE),
        "small loose pieces");
    list(
        stencil.openings().parts().stream()
            .filter(r -> r.area() < limits.scrap())
            .sorted(smallestFirst)
            .toList(),
        r -> bit("Scrap of an opening, %s, hardly meant.", r, Fix.DROP_SCRAPS),
        "scraps");
  }

  private Finding narrow(String sentence, ThinPlace place, double limit) {
    return Finding.look(sentence.formatted(show(place.width()), show(limit)), place.at());
  }

  private Finding bit(String sentence, Region region, Fix fix) {
    String size = Quantity.smallArea(region.area(), units);
    Vec at = region.labelPoint();
    return Finding.look(sentence.formatted(size), at).offering(fix);
  }

  private Finding needle(String what, Needle n, double width) {
    String words = "Needle point of %s, %.0f° sharp: narrower than %s for %s from its tip.";
    double length = n.narrowFor(width);
    return Finding.look(words.formatted(what, n.degrees(), show(width), show(length)), n.at());
  }

  private <T> void list(List<T> found, Function<T, Finding> say, String kind) {
    found.stream().limit(MOST_OF_A_KIND).map(say).forEach(findings::add);
    if (found.size() > MOST_OF_A_KIND) {
      String more = "… and " + (found.size() - MOST_OF_A_KIND) + " more " + kind + ".";
      findings.add(Finding.look(more));
    }
  }

  private String show(double mm) {
    return LengthFormat.fine(mm, units);
  }
}
