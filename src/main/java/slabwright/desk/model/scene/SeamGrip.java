package slabwright.desk.model.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.ComputedInlay;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.StripDirection;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;
import slabwright.site.HandSeams;
import slabwright.site.Inlay;
import slabwright.units.Length;

/**
 * The seams of an inlay as they can be held: where they lie on the site, and what they become when
 * one is moved.
 *
 * @param toSite from the blank to the site
 * @param overlap of two panels, mm
 */
public record SeamGrip(
    String inlayId, HandSeams seams, Affine toSite, Bounds blank, double overlap) {

  /** Below this share of its own way an arrow leaves a seam alone: it points along the seam. */
  private static final double SIDEWAYS = 0.5;

  /** The seams of an inlay that has been worked out; empty when it has none. */
  public static Optional<SeamGrip> of(ComputedInlay answer, Inlay now) {
    Optional<PanelPlan> panels = answer.plan().flatMap(p -> p.panels());
    Optional<Affine> map = answer.toSite(now);
    if (panels.isEmpty() || map.isEmpty()) {
      return Optional.empty();
    }
    HandSeams seams = now.spec().changes().seams().orElseGet(() -> chosen(panels.get()));
    return seams.places().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new SeamGrip(
                now.id(), seams, map.get(), panels.get().blank(), now.spec().overlap().mm()));
  }

  /** A plan's seams as a person would have set them. */
  public static HandSeams chosen(PanelPlan p) {
    return new HandSeams(p.turn().strips(), p.seams().stream().map(Length::mm).toList());
  }

  /** The middle of a seam's lap on the site. */
  public Line line(int seam) {
    double at = seams.places().get(seam).mm() + overlap / 2;
    double end = turn().along(blank);
    return Line.of(toSite.apply(point(at, 0)), toSite.apply(point(at, end)));
  }

  /** The seam within {@code reach} mm of a place, if there is one. */
  public Optional<Integer> at(Vec site, double reach) {
    for (int i = 0; i < seams.places().size(); i++) {
      if (SegmentGeometry.distance(line(i), site) <= reach) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** All seams with one of them moved so that its lap's middle runs through a place. */
  public HandSeams through(int seam, Vec site) {
    Vec p = toSite.inverse().apply(site);
    double across = turn() == StripDirection.DOWN ? p.x() : p.y();
    return moved(seam, Length.mm(Math.rint(across - overlap / 2)));
  }

  /** All seams with one of them at another place, held on the blank and in rising order. */
  public HandSeams moved(int seam, Length to) {
    List<Length> places = new ArrayList<>(seams.places());
    double low = seam == 0 ? 1 : places.get(seam - 1).mm() + 1;
    double last = Math.floor(turn().across(blank) - overlap - 1);
    double high = seam == places.size() - 1 ? last : places.get(seam + 1).mm() - 1;
    double held = Math.max(low, Math.min(high, to.mm()));
    places.set(seam, held == to.mm() ? to : Length.mm(held));
    return new HandSeams(seams.strips(), places);
  }

  /**
   * All seams with one of them a step further.
   *
   * @param way on the site, of length 1; a seam that lies along it stays
   */
  public HandSeams nudged(int seam, Vec way, double step) {
    double share = way.dot(toSite.apply(point(1, 0)).minus(toSite.apply(point(0, 0))).unit());
    return Math.abs(share) < SIDEWAYS
        ? seams
        : moved(seam, Length.mm(seams.places().get(seam).mm() + Math.copySign(step, share)));
  }

  private StripDirection turn() {
    return StripDirection.of(seams.strips());
  }

  private Vec point(double across, double along) {
    return turn() == StripDirection.DOWN ? new Vec(across, along) : new Vec(along, across);
  }
}
