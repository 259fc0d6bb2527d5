package slabwright.inlay.stencil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import slabwright.inlay.stencil.FindingMeasurement.Size;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.units.LengthFormat;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/** Looks at a stencil before it is cut: what will lift, tear or get lost, and where. */
public final class StencilCheck {
  private static final int MOST_OF_A_KIND = 12;

  private final StencilLimits limits;
  private final UnitSystem units;
  private final List<Finding> findings = new ArrayList<>();
  private int layer;

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
    layer = stencil.layer();
    narrow(stencil);
    small(stencil);
    needles(stencil);
    return List.copyOf(findings);
  }

  private void narrow(Stencil stencil) {
    Function<ThinPlace, Size> size = p -> new Size(p.width(), 0);
    list(
        FindingMeasurement.Kind.THIN_MASK,
        limits.mask(),
        ThinPlaceFinder.in(stencil.mask(), limits.mask()),
        size,
        p ->
            narrow("Mask %s thin; the film holds %s.", p, limits.mask())
                .offering(FixKind.WIDEN_VINYL),
        "places like that");
    list(
        FindingMeasurement.Kind.NARROW_OPENING,
        limits.opening(),
        ThinPlaceFinder.in(stencil.openings(), limits.opening()),
        size,
        p -> narrow("Opening %s narrow; the least that weeds clean is %s.", p, limits.opening()),
        "places like that");
  }

  private void small(Stencil stencil) {
    list(
        FindingMeasurement.Kind.SMALL_LOOSE_PIECE,
        limits.loosePiece(),
        smaller(stencil.loosePieces().stream().map(LoosePiece::region), limits.loosePiece()),
        r -> new Size(r.area(), 0),
        r ->
            bit(
                "Loose piece of %s, so small that it may not hold on the tape.",
                r, FixKind.DROP_LOOSE),
        "small loose pieces");
    list(
        FindingMeasurement.Kind.SCRAP,
        limits.scrap(),
        smaller(stencil.openings().parts().stream(), limits.scrap()),
        r -> new Size(r.area(), 0),
        r -> bit("Scrap of an opening, %s, hardly meant.", r, FixKind.DROP_SCRAPS),
        "scraps");
  }

  private static List<Region> smaller(Stream<Region> regions, double limit) {
    return regions
        .filter(r -> r.area() < limit)
        .sorted(Comparator.comparingDouble(Region::area))
        .toList();
  }

  private void needles(Stencil stencil) {
    list(
        FindingMeasurement.Kind.NEEDLE_OF_VINYL,
        limits.mask(),
        SharpCornerFinder.sharper(stencil.mask(), limits.needle()),
        n -> new Size(n.narrowFor(limits.mask()), n.degrees()),
        n -> needle("vinyl", n, limits.mask()),
        "needle points of vinyl");
    list(
        FindingMeasurement.Kind.NEEDLE_OF_OPENING,
        limits.opening(),
        SharpCornerFinder.sharper(stencil.openings(), limits.needle()),
        n -> new Size(n.narrowFor(limits.opening()), n.degrees()),
        n -> needle("opening", n, limits.opening()).offering(FixKind.ROUND_NEEDLES),
        "needle points of opening");
  }

  private Finding narrow(String sentence, ThinPlace place, double limit) {
    return Finding.look(sentence.formatted(show(place.width()), show(limit)), place.at());
  }

  private Finding bit(String sentence, Region region, FixKind fix) {
    String size = QuantityFormat.smallArea(region.area(), units);
    Vec at = region.labelPoint();
    return Finding.look(sentence.formatted(size), at).offering(fix);
  }

  private Finding needle(String what, SharpCorner n, double width) {
    String words = "Needle point of %s, %.0f° sharp: narrower than %s for %s from its tip.";
    double length = n.narrowFor(width);
    return Finding.look(words.formatted(what, n.degrees(), show(width), show(length)), n.at());
  }

  private <T> void list(
      FindingMeasurement.Kind kind,
      double limit,
      List<T> found,
      Function<T, Size> size,
      Function<T, Finding> say,
      String name) {
    for (T t : found.subList(0, Math.min(MOST_OF_A_KIND, found.size()))) {
      findings.add(
          say.apply(t)
              .measured(new FindingMeasurement(kind, layer, limit, List.of(size.apply(t)))));
    }
    if (found.size() > MOST_OF_A_KIND) {
      List<T> rest = found.subList(MOST_OF_A_KIND, found.size());
      FindingMeasurement seen =
          new FindingMeasurement(kind, layer, limit, rest.stream().map(size).toList());
      String more = "… and " + rest.size() + " more " + name + ".";
      findings.add(Finding.look(more).measured(seen));
    }
  }

  private String show(double mm) {
    return LengthFormat.fine(mm, units);
  }
}
