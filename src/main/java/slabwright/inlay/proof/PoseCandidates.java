package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.proof.RingMoments.Complex;
import slabwright.shape.Vec;

/**
 * Poses worth trying. A contour of the plan and one of the drawing that look alike give the scale
 * and the place, and each of their moments that is not nothing gives a few turns; two such pairs
 * give the turn also where contours are round.
 */
final class PoseCandidates {
  private static final int MOST_RINGS = 10;
  private static final int MOST_PAIRED = 6;
  private static final double UNLIKE = 0.3;
  private static final double NOTHING = 0.02;
  private static final double SCALES_AGREE = 0.03;
  private static final double LEAST_APART = 0.05;

  private record Match(RingMoments plan, RingMoments drawn) {
    double scale() {
      return Math.sqrt(drawn.area() / plan.area());
    }
  }

  private final PoseSet poses = new PoseSet();
  private final ScaleRange scales;

  private PoseCandidates(ScaleRange scales) {
    this.scales = scales;
  }

  /** Poses whose scale lies in the range. */
  static List<Pose> of(PlannedPiece sheet, List<RingMoments> drawn, ScaleRange scales) {
    PoseCandidates c = new PoseCandidates(scales);
    List<Match> matches = new ArrayList<>();
    int early = 0;
    for (int i = 0; i < Math.min(MOST_RINGS, sheet.rings.size()); i++) {
      early = i == MOST_PAIRED ? matches.size() : early;
      matches.addAll(c.matches(sheet.rings.get(i), drawn));
    }
    early = early == 0 ? matches.size() : early;
    matches.addAll(c.matches(sheet.edge(), drawn));
    matches.forEach(c::turns);
    for (Match a : matches.subList(0, early)) {
      matches.forEach(b -> c.pair(a, b));
    }
    return c.poses.list();
  }

  private List<Match> matches(RingMoments plan, List<RingMoments> drawn) {
    List<Match> list = new ArrayList<>();
    for (RingMoments d : drawn) {
      Match m = new Match(plan, d);
      if (scales.holds(m.scale()) && plan.dissimilarity(d) < UNLIKE) {
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
    Vec from = b.plan.centroid().minus(a.plan.centroid());
    Vec to = b.drawn.centroid().minus(a.drawn.centroid());
    double scale = to.length() / from.length();
    boolean apart = from.length() > LEAST_APART * Math.sqrt(a.plan.area());
    boolean agree =
        apart
            && Math.abs(scale / a.scale() - 1) < SCALES_AGREE
            && Math.abs(a.scale() / b.scale() - 1) < SCALES_AGREE;
    if (!agree) {
      return;
    }
    for (boolean mirrored : new boolean[] {false, true}) {
      double start = mirrored ? -from.angle() : from.angle();
      poses.add(
          Pose.taking(a.plan.centroid(), a.drawn.centroid(), scale, to.angle() - start, mirrored));
    }
  }
}
