package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.proof.RingMoments.Complex;
import slabwright.shape.Vec;

/**
 * Poses worth trying. A contour of the plan and one of the drawing that look alike give the scale
 * and the place, and each of their moments that is not nothing gives a few turns; two such pairs
 * give the turn also where contours are round. Of very many that look alike, only those are taken
 * in pairs whose neighbours are there too ({@link CrowdedMatches}).
 */
final class PoseCandidates {
  static final double SCALES_AGREE = 0.03;
  static final double LEAST_APART = 0.05;
  private static final int MOST_RINGS = 10;
  private static final int MOST_PAIRED = 6;
  private static final double UNLIKE = 0.3;
  private static final double NOTHING = 0.02;

  /** Up to so many contours that look alike each is taken with each. */
  private static final int MOST_ALL_WITH_ALL = 1500;

  /** A contour of the plan and one of the drawing that look alike. */
  record Match(RingMoments plan, RingMoments drawn) {
    double scale() {
      return Math.sqrt(drawn.area() / plan.area());
    }

    boolean isAlike() {
      return plan.dissimilarity(drawn) < UNLIKE;
    }

    /** Whether this and another may lie in one and the same pose. */
    boolean agreesWith(Match o) {
      Vec from = o.plan.centroid().minus(plan.centroid());
      Vec to = o.drawn.centroid().minus(drawn.centroid());
      return from.length() > LEAST_APART * Math.sqrt(plan.area())
          && Math.abs(to.length() / from.length() / scale() - 1) < SCALES_AGREE
          && Math.abs(scale() / o.scale() - 1) < SCALES_AGREE;
    }
  }

  private final PoseSet poses = new PoseSet();
  private final ScaleRange scales;

  private PoseCandidates(ScaleRange scales) {
    this.scales = scales;
  }

  /** Poses whose scale lies in the range. */
  static List<Pose> of(PlannedPiece sheet, List<RingMoments> drawn, ScaleRange scales) {
    return of(sheet, drawn, scales, MOST_ALL_WITH_ALL);
  }

  /**
   * The same.
   *
   * @param mostAllWithAll up to how many contours that look alike each is taken with each
   */
  static List<Pose> of(
      PlannedPiece sheet, List<RingMoments> drawn, ScaleRange scales, int mostAllWithAll) {
    PoseCandidates c = new PoseCandidates(scales);
    List<List<Match>> ofRings = new ArrayList<>();
    for (int i = 0; i < Math.min(MOST_RINGS, sheet.rings.size()); i++) {
      ofRings.add(c.matches(sheet.rings.get(i), drawn));
    }
    int early = Math.min(MOST_PAIRED, ofRings.size());
    if (joined(ofRings.subList(0, early)).isEmpty()) {
      early = ofRings.size();
    }
    List<Match> ofEdge = c.matches(sheet.edge(), drawn);
    List<Match> matches = new ArrayList<>(joined(ofRings));
    matches.addAll(ofEdge);
    matches.forEach(c::turns);
    boolean paired =
        matches.size() > mostAllWithAll
            && new CrowdedMatches(sheet, drawn, scales, ofRings, ofEdge).pairs(early, c::pair);
    if (!paired) {
      for (Match a : joined(ofRings.subList(0, early))) {
        matches.forEach(b -> c.pair(a, b));
      }
    }
    return c.poses.list();
  }

  private static List<Match> joined(List<List<Match>> lists) {
    return lists.stream().flatMap(List::stream).toList();
  }

  private List<Match> matches(RingMoments plan, List<RingMoments> drawn) {
    List<Match> list = new ArrayList<>();
    for (RingMoments d : drawn) {
      Match m = new Match(plan, d);
      if (scales.holds(m.scale()) && m.isAlike()) {
        list.add(m);
      }
    }
    return list;
  }

  private void turns(Match m) {
    for (int k = 0; k < RingMoments.ORDER.size(); k++) {
      Complex to = m.drawn.moments().get(k);
      Complex from = m.plan.moments().get(k);
      double scale = Math.pow(m.plan.c11(), k < 1 ? 1 : k < 3 ? 1.5 : 2);
      if (Math.min(to.size(), from.size()) > NOTHING * scale) {
        turns(m, from, to, RingMoments.ORDER.get(k));
      }
    }
  }

  private void turns(Match m, Complex from, Complex to, int order) {
    for (boolean mirrored : new boolean[] {false, true}) {
      double start = mirrored ? -from.angle() : from.angle();
      for (int n = 0; n < order; n++) {
        double turn = (to.angle() - start + 2 * Math.PI * n) / order;
        poses.add(Pose.taking(m.plan.centroid(), m.drawn.centroid(), m.scale(), turn, mirrored));
      }
    }
  }

  private void pair(Match a, Match b) {
    if (!a.agreesWith(b)) {
      return;
    }
    Vec from = b.plan.centroid().minus(a.plan.centroid());
    Vec to = b.drawn.centroid().minus(a.drawn.centroid());
    double scale = to.length() / from.length();
    for (boolean mirrored : new boolean[] {false, true}) {
      double start = mirrored ? -from.angle() : from.angle();
      poses.add(
          Pose.taking(a.plan.centroid(), a.drawn.centroid(), scale, to.angle() - start, mirrored));
    }
  }
}
