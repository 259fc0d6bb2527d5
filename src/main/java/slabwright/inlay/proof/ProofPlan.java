package slabwright.inlay.proof;

import java.util.List;
import java.util.Optional;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * What the shop should have drawn.
 *
 * <p>Frame: mm from the blank's top-left corner as read, x right, y down.
 *
 * @param openings what is cut out
 * @param blank the vinyl's outer rectangle
 * @param panels the pieces the blank is cut in, overlaps included; may be empty or the blank alone
 * @param apart whether they are local blanks that don't touch: then each is judged by itself, for
 *     no edge runs round the whole
 * @param onWhole the same openings on the whole blank, where the plan asks for local ones: larger
 *     vinyl than ordered, and nothing on the floor is other than planned
 */
public record ProofPlan(
    Region openings, Bounds blank, List<Panel> panels, boolean apart, Optional<ProofPlan> onWhole) {
  private static final double TWIN_MM = 0.1;
  private static final double TWIN_MM2 = 25;

  /** What is cut from one blank. */
  public ProofPlan(Region openings, Bounds blank, List<Panel> panels) {
    this(openings, blank, panels, false, Optional.empty());
  }

  public ProofPlan {
    panels = List.copyOf(panels);
  }

  /**
   * What the shop should draw of one stencil of an inlay.
   *
   * @param stencil from 1, in laying order
   */
  public static ProofPlan of(InlayPlan plan, int stencil) {
    Stencil s = plan.stencils().stencils().get(stencil - 1);
    Optional<PanelPlan> own = plan.panels().map(p -> p.of(s));
    return new ProofPlan(
        s.openings(),
        own.map(PanelPlan::blank).orElse(plan.stencils().blank()),
        own.map(PanelPlan::panels).orElse(List.of()),
        own.filter(PanelPlan::isApart).isPresent(),
        plan.panels()
            .filter(p -> p.isLocal(s))
            .map(p -> whole(s.openings(), plan.stencils().blank())));
  }

  /** The panels that have anything to cut; the others need no file. */
  List<Panel> cutPanels() {
    return panels.stream()
        .filter(p -> !openings.intersect(Region.rectangle(p.box())).isEmpty())
        .toList();
  }

  /** Every panel that has anything to cut, with its openings. */
  List<PlannedPiece> pieces() {
    return cutPanels().stream()
        .map(
            p -> new PlannedPiece(p.name(), p.box(), openings.intersect(Region.rectangle(p.box()))))
        .toList();
  }

  /** Names of other pieces that are cut just like this one. */
  List<String> twins(String panel) {
    List<PlannedPiece> all = pieces();
    return all.stream()
        .filter(p -> p.panel.equals(panel))
        .flatMap(p -> all.stream().filter(o -> !o.panel.equals(panel) && isTwin(p, o)))
        .map(o -> o.panel)
        .toList();
  }

  private static boolean isTwin(PlannedPiece a, PlannedPiece b) {
    Vec by = new Vec(b.bounds.minX() - a.bounds.minX(), b.bounds.minY() - a.bounds.minY());
    Region moved = a.openings.map(Affine.move(by.x(), by.y()));
    return Math.abs(a.bounds.width() - b.bounds.width()) < TWIN_MM
        && Math.abs(a.bounds.height() - b.bounds.height()) < TWIN_MM
        && moved.minus(b.openings).area() + b.openings.minus(moved).area() < TWIN_MM2;
  }

  public static ProofPlan whole(Region openings, Bounds blank) {
    return new ProofPlan(openings, blank, List.of());
  }
}
