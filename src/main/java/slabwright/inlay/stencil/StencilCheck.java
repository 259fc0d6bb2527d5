package slabwright.inlay.stencil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import slabwright.inlay.stencil.FindingMeasurement.Size;
import slabwright.shape.Region;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
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
            Finding.look(
                    Message.of(
                        "inlay.stencil-check.mask-thin", show(p.width()), show(limits.mask())),
                    p.at())
                .offering(FixKind.WIDEN_VINYL),
        n -> Message.of("inlay.stencil-check.more-places-like-that", n));
    list(
        FindingMeasurement.Kind.NARROW_OPENING,
        limits.opening(),
        ThinPlaceFinder.in(stencil.openings(), limits.opening()),
        size,
        p ->
            Finding.look(
                Message.of(
                    "inlay.stencil-check.opening-narrow", show(p.width()), show(limits.opening())),
                p.at()),
        n -> Message.of("inlay.stencil-check.more-places-like-that", n));
  }

  private void small(Stencil stencil) {
    list(
        FindingMeasurement.Kind.SMALL_LOOSE_PIECE,
        limits.loosePiece(),
        smaller(stencil.loosePieces().stream().map(LoosePiece::region), limits.loosePiece()),
        r -> new Size(r.area(), 0),
        r ->
            Finding.look(Message.of("inlay.stencil-check.loose-piece", area(r)), r.labelPoint())
                .offering(FixKind.DROP_LOOSE),
        n -> Message.of("inlay.stencil-check.more-small-loose-pieces", n));
    list(
        FindingMeasurement.Kind.SCRAP,
        limits.scrap(),
        smaller(stencil.openings().parts().stream(), limits.scrap()),
        r -> new Size(r.area(), 0),
        r ->
            Finding.look(Message.of("inlay.stencil-check.scrap", area(r)), r.labelPoint())
                .offering(FixKind.DROP_SCRAPS),
        n -> Message.of("inlay.stencil-check.more-scraps", n));
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
        this::needleOfVinyl,
        n -> Message.of("inlay.stencil-check.more-needle-points-of-vinyl", n));
    list(
        FindingMeasurement.Kind.NEEDLE_OF_OPENING,
        limits.opening(),
        SharpCornerFinder.sharper(stencil.openings(), limits.needle()),
        n -> new Size(n.narrowFor(limits.opening()), n.degrees()),
        this::needleOfOpening,
        n -> Message.of("inlay.stencil-check.more-needle-points-of-opening", n));
  }

  private Finding needleOfVinyl(SharpCorner n) {
    double width = limits.mask();
    String length = show(n.narrowFor(width));
    return Finding.look(
        Message.of("inlay.stencil-check.needle-point-of-vinyl", n.degrees(), show(width), length),
        n.at());
  }

  private Finding needleOfOpening(SharpCorner n) {
    double width = limits.opening();
    String length = show(n.narrowFor(width));
    return Finding.look(
            Message.of(
                "inlay.stencil-check.needle-point-of-opening", n.degrees(), show(width), length),
            n.at())
        .offering(FixKind.ROUND_NEEDLES);
  }

  private <T> void list(
      FindingMeasurement.Kind kind,
      double limit,
      List<T> found,
      Function<T, Size> size,
      Function<T, Finding> say,
      IntFunction<Message> more) {
    for (T t : found.subList(0, Math.min(MOST_OF_A_KIND, found.size()))) {
      findings.add(
          say.apply(t)
              .measured(new FindingMeasurement(kind, layer, limit, List.of(size.apply(t)))));
    }
    if (found.size() > MOST_OF_A_KIND) {
      List<T> rest = found.subList(MOST_OF_A_KIND, found.size());
      FindingMeasurement seen =
          new FindingMeasurement(kind, layer, limit, rest.stream().map(size).toList());
      findings.add(Finding.look(more.apply(rest.size())).measured(seen));
    }
  }

  private String area(Region region) {
    return QuantityFormat.smallArea(region.area(), units);
  }

  private String show(double mm) {
    return LengthFormat.fine(mm, units);
  }
}
