package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * How the drawn openings of one sheet differ from the planned ones once they lie on them: pieces
 * missing and added, and how far edges stray.
 *
 * <p>A difference is a piece when what of it is thicker than the thin limit has the least area, or
 * when it is anywhere as thick as the thickness limit. A speck below both that stands by itself is
 * nothing. All else is an edge that strays: the distance from every point of either outline to the
 * other outline, pieces aside.
 */
final class OpeningsDifference {
  /**
   * Edges that stray.
   *
   * @param most how far at worst, mm
   * @param at where that is
   * @param places runs along the outlines beyond the limit; 0 when all is within it
   * @param slivers mm² of difference that is no piece
   * @param even whether nearly all edges stray by the openings' fat
   */
  record Straying(double most, Vec at, int places, double slivers, boolean even) {}

  private static final double TOLERANCE_MM = 0.02;
  private static final double LEAST_STEP_MM = 1;
  private static final double MOST_SAMPLES = 20_000;
  private static final double FARTHEST_MM = 60;
  private static final double ON_EDGE_MM = 0.05;
  private static final double ROUND_PIECE = 1.6;
  private static final double LEAST_FAT_MM = 0.15;
  private static final double MOST_MITRE = 3;
  private static final double STRIP = 25;
  private static final double STRIP_THICK = 1.7;
  private static final double EVEN_SHARE = 0.7;
  private static final double EVEN = 0.35;
  private static final int MOST_LOOKED_AT = 4000;

  private final ProofLimits limits;
  private final Region plan;
  private final Region open;
  private final Bounds inside;
  private final double fat;
  private final ContourSegments planEdges;
  private final ContourSegments openEdges;
  private final List<Region> missing = new ArrayList<>();
  private final List<Region> added = new ArrayList<>();
  private final List<Region> slivers = new ArrayList<>();
  private final List<Region> strips = new ArrayList<>();
  private final List<Region> specks = new ArrayList<>();
  private final Straying straying;

  /**
   * Compares.
   *
   * @param open the drawn openings, laid on the planned ones
   * @param inside where to look; what the sheet's own edge does is judged elsewhere
   * @param fat mm that the openings are fatter all round
   */
  OpeningsDifference(ProofLimits limits, Region plan, Region open, Bounds inside, double fat) {
    this.limits = limits;
    this.plan = plan;
    this.open = open;
    this.inside = inside;
    this.fat = fat;
    planEdges = new ContourSegments(plan.rings());
    openEdges = new ContourSegments(open.rings());
    Region here = Region.rectangle(inside);
    sort(plan.minus(open).intersect(here), missing);
    sort(open.minus(plan).intersect(here), added);
    straying = measured();
  }

  List<Region> missing() {
    return List.copyOf(missing);
  }

  List<Region> added() {
    return List.copyOf(added);
  }

  Straying straying() {
    return straying;
  }

  /** Area of all that differs, mm². */
  double area() {
    double sum = straying.slivers;
    for (Region r : missing) {
      sum += r.area();
    }
    for (Region r : added) {
      sum += r.area();
    }
    return sum;
  }

  private void sort(Region difference, List<Region> pieces) {
    for (Region part : difference.parts()) {
      Optional<Region> piece = piece(part);
      if (piece.isPresent() && isStrip(part) && !standsAlone(part)) {
        slivers.add(part);
        strips.add(part);
      } else if (piece.isPresent()) {
        pieces.add(piece.get());
      } else if (part.area() < limits.pieceArea() && standsAlone(part)) {
        specks.add(part);
      } else {
        slivers.add(part);
      }
    }
  }

  private Optional<Region> piece(Region part) {
    Bounds b = part.bounds();
    double narrow = Math.min(b.width(), b.height());
    if (narrow <= limits.thin()
        || (part.area() < limits.pieceArea() && narrow < limits.pieceThick())) {
      return Optional.empty();
    }
    Region thick = part.opened(limits.thin() / 2, TOLERANCE_MM);
    boolean large = thick.area() >= limits.pieceArea();
    boolean fat = !large && !part.offset(-limits.pieceThick() / 2, TOLERANCE_MM).isEmpty();
    return large || fat ? Optional.of(thick) : Optional.empty();
  }

  /**
   * A whole opening or island too many or too few: its edge belongs to one drawing alone and meets
   * the other nowhere, while a tooth has its root on the edge that it grows from.
   */
  private boolean standsAlone(Region part) {
    int all = 0;
    int planned = 0;
    int drawn = 0;
    for (Ring ring : part.rings()) {
      List<Vec> c = ring.points();
      for (int i = 0; i < 2 * c.size(); i++) {
        Vec p = c.get(i / 2).towards(c.get((i / 2 + 1) % c.size()), i % 2 / 2.0);
        all++;
        planned += planEdges.nearest(p, ON_EDGE_MM).isPresent() ? 1 : 0;
        drawn += openEdges.nearest(p, ON_EDGE_MM).isPresent() ? 1 : 0;
      }
    }
    return (planned == all && drawn == 0) || (drawn == all && planned == 0);
  }

  /** Long and hardly thicker than a piece must be: people see an edge that strays. */
  private boolean isStrip(Region part) {
    double length = part.boundaryLength();
    return length * length >= STRIP * part.area()
        && part.offset(-STRIP_THICK * limits.pieceThick() / 2, TOLERANCE_MM).isEmpty();
  }

  private Straying measured() {
    List<EdgeSample> all = new ArrayList<>();
    List<Double> far = new ArrayList<>();
    measure(plan.rings(), openEdges, all, far);
    int fromPlan = all.size();
    measure(open.rings(), planEdges, all, far);
    long even = 0;
    for (int i = 0; i < fromPlan; i++) {
      even += Math.abs(far.get(i) - Math.abs(fat)) <= EVEN * Math.abs(fat) ? 1 : 0;
    }
    boolean isEven = fromPlan > 0 && even >= EVEN_SHARE * fromPlan;
    List<Integer> beyond = new ArrayList<>();
    double most = 0;
    Vec at = Vec.ZERO;
    for (int i = 0; i < all.size(); i++) {
      if (far.get(i) > limits.edge()) {
        beyond.add(i);
      } else if (far.get(i) > most) {
        most = far.get(i);
        at = all.get(i).at();
      }
    }
    return worst(all, far, beyond, new Straying(most, at, 0, 0, isEven));
  }

  private void measure(
      List<Ring> rings, ContourSegments other, List<EdgeSample> all, List<Double> far) {
    double length = rings.stream().mapToDouble(Ring::length).sum();
    double step = Math.max(LEAST_STEP_MM, length / MOST_SAMPLES);
    for (EdgeSample s : EdgeSample.dense(rings, step)) {
      if (inside.contains(s.at())) {
        all.add(s);
        far.add(
            other
                .nearest(s.at(), FARTHEST_MM)
                .map(ContourSegments.Near::distance)
                .orElse(FARTHEST_MM));
      }
    }
  }

  /** Adds what lies beyond the limit and is no edge of a piece or speck. */
  private Straying worst(
      List<EdgeSample> all, List<Double> far, List<Integer> beyond, Straying within) {
    int stride = 1 + beyond.size() / MOST_LOOKED_AT;
    double most = within.most;
    Vec at = within.at;
    int places = 0;
    int last = Integer.MIN_VALUE / 2;
    for (int k = 0; k < beyond.size(); k += stride) {
      int i = beyond.get(k);
      Vec p = all.get(i).at();
      if (!isCornerOfFat(p, far.get(i)) && !isEdgeOfPiece(p) && !becomesPiece(p, far.get(i))) {
        strips.removeIf(r -> isNear(List.of(r), p, ON_EDGE_MM));
        places += i - last > 2 * stride ? 1 : 0;
        last = i;
        if (far.get(i) > most) {
          most = far.get(i);
          at = p;
        }
      }
    }
    for (Region strip : strips) {
      // no single point of its edges strays too far, yet it is too thick
      places++;
      if (limits.thin() > most) {
        most = limits.thin();
        at = strip.labelPoint();
      }
    }
    double thin = slivers.stream().mapToDouble(Region::area).sum();
    return new Straying(most, at, places, thin, within.even);
  }

  /** A corner of something fatter all round within the limit strays farther than its sides do. */
  private boolean isCornerOfFat(Vec p, double far) {
    double by = Math.abs(fat);
    return by >= LEAST_FAT_MM
        && by <= limits.edge()
        && far <= Math.min(MOST_MITRE * limits.edge(), by / sharpestNear(p) + LEAST_FAT_MM);
  }

  /** Sine of half the angle of the sharpest planned corner near by; 1 without one. */
  private double sharpestNear(Vec p) {
    double reach = MOST_MITRE * limits.edge();
    double sharpest = 1;
    for (Ring ring : plan.rings()) {
      List<Vec> c = ring.points();
      for (int i = 0; i < c.size(); i++) {
        Vec at = c.get(i);
        if (Math.abs(at.x() - p.x()) <= reach && at.distanceTo(p) <= reach) {
          Vec before = c.get((i + c.size() - 1) % c.size()).minus(at).unit();
          Vec after = c.get((i + 1) % c.size()).minus(at).unit();
          sharpest = Math.min(sharpest, before.minus(after).length() / 2);
        }
      }
    }
    return Math.max(sharpest, 1 / MOST_MITRE);
  }

  private boolean isEdgeOfPiece(Vec p) {
    double near = ROUND_PIECE * limits.edge();
    return isNear(missing, p, near) || isNear(added, p, near) || isNear(specks, p, ON_EDGE_MM);
  }

  private static boolean isNear(List<Region> regions, Vec p, double reach) {
    for (Region r : regions) {
      if (r.bounds().grown(reach).contains(p) && r.distanceTo(p) <= reach) {
        return true;
      }
    }
    return false;
  }

  /** A thin strip whose edges have nothing near them is a piece after all, if it has the area. */
  private boolean becomesPiece(Vec p, double far) {
    if (far < STRIP_THICK * limits.pieceThick()) {
      return false;
    }
    for (Region r : List.copyOf(slivers)) {
      if (r.area() >= limits.pieceArea()
          && r.bounds().grown(ON_EDGE_MM).contains(p)
          && r.distanceTo(p) <= ON_EDGE_MM) {
        slivers.remove(r);
        (plan.contains(r.labelPoint()) ? missing : added).add(r);
        return true;
      }
    }
    return false;
  }
}
