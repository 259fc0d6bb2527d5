package slabwright.inlay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.Inlay;
import slabwright.units.Message;

/**
 * An inlay worked out: its plan, or why not.
 *
 * @param inlay as it was when worked out
 * @param cutOut what is weeded out of each panel, in the order of {@link PanelPlan#all}
 * @param film what its panels take of the roll
 */
public record ComputedInlay(
    Inlay inlay,
    Optional<PlacedInlay> placed,
    Optional<Message> refusal,
    List<Region> cutOut,
    Film film) {
  /**
   * Film of all stencils together.
   *
   * @param roll its length, mm
   * @param waste share of it that is in no blank, 0 to 1
   */
  public record Film(double roll, double waste) {
    private static Film of(InlayPlan plan) {
      return new Film(plan.rollLength(), plan.waste());
    }
  }

  public ComputedInlay {
    cutOut = List.copyOf(cutOut);
  }

  public static ComputedInlay of(Inlay inlay, PlacedInlay.Placing placing) {
    return placing instanceof PlacedInlay.Placing.Done done
        ? new ComputedInlay(
            inlay,
            Optional.of(done.placed()),
            Optional.empty(),
            cutOut(done.placed().plan()),
            Film.of(done.placed().plan()))
        : new ComputedInlay(
            inlay,
            Optional.empty(),
            Optional.of(((PlacedInlay.Placing.Refused) placing).message()),
            List.of(),
            new Film(0, 0));
  }

  private static List<Region> cutOut(InlayPlan plan) {
    List<Region> open = new ArrayList<>();
    for (PanelPlan p : plan.panels().stream().toList()) {
      for (Panel panel : p.all()) {
        Region of =
            p.panels().contains(panel)
                ? plan.openings()
                : Region.union(
                    plan.stencils().stencils().stream()
                        .filter(s -> p.isLocal(s) && p.cut(s).contains(panel))
                        .map(Stencil::openings)
                        .toList());
        open.add(of.intersect(Region.rectangle(panel.box())));
      }
    }
    return open;
  }

  public Optional<InlayPlan> plan() {
    return placed.map(PlacedInlay::plan);
  }

  /**
   * From the blank to the site as the inlay is placed now, which may have moved, turned or grown
   * since it was worked out.
   */
  public Optional<Affine> toSite(Inlay now) {
    return plan().flatMap(InlayPlan::toSite).map(m -> m.then(since(now)));
  }

  private Affine since(Inlay now) {
    Vec a = inlay.middle().vec();
    Vec b = now.middle().vec();
    double k = now.width().mm() / inlay.width().mm();
    return Affine.move(-a.x(), -a.y())
        .then(Affine.scale(k, k))
        .then(Affine.turn(Math.toRadians(now.turn() - inlay.turn())))
        .then(Affine.move(b.x(), b.y()));
  }

  /** The blank's corners on the site, from its top left as read, going right. */
  public List<Vec> blank(Inlay now) {
    Optional<Affine> map = toSite(now);
    if (map.isEmpty()) {
      return List.of();
    }
    Bounds b = plan().orElseThrow().stencils().blank();
    List<Vec> corners =
        List.of(
            new Vec(b.minX(), b.minY()),
            new Vec(b.maxX(), b.minY()),
            new Vec(b.maxX(), b.maxY()),
            new Vec(b.minX(), b.maxY()));
    return corners.stream().map(map.get()::apply).toList();
  }

  /** Rings of a region of the blank, on the site. */
  public List<Ring> onSite(Region region, Inlay now) {
    Optional<Affine> map = toSite(now);
    List<Ring> rings = new ArrayList<>();
    map.ifPresent(m -> region.rings().forEach(r -> rings.add(r.map(m))));
    return rings;
  }
}
