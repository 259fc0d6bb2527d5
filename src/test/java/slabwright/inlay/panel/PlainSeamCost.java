package slabwright.inlay.panel;

import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.stencil.LoosePiece;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** The cost of a seam across x, written from its definition with regions and lines alone. */
final class PlainSeamCost {
  private static final double FAR = 1e5;
  private static final double HALF_GRID = 5e-4;

  private final StencilSet set;
  private final double overlap;
  private final SeamWeights w;

  PlainSeamCost(StencilSet set, double overlap, SeamWeights w) {
    this.set = set;
    this.overlap = overlap;
    this.w = w;
  }

  double at(double place) {
    double end = place + overlap;
    double sum = 0;
    for (Stencil s : set.stencils()) {
      sum += w.edge() * edge(s.openings(), place - w.near(), end + w.near());
      sum += w.loosePiece() * s.loosePieces().stream().filter(p -> isCut(p, place, end)).count();
      for (Ring ring : s.openings().rings()) {
        sum += w.sliver() * slivers(ring, place, place + w.sliverWidth());
        sum += w.sliver() * slivers(ring, end, end - w.sliverWidth());
      }
    }
    return sum;
  }

  private static double edge(Region openings, double from, double to) {
    double sum = 0;
    for (Ring ring : openings.rings()) {
      for (int i = 0; i < ring.points().size(); i++) {
        Vec a = ring.points().get(i);
        Vec b = ring.points().get((i + 1) % ring.points().size());
        sum += a.distanceTo(b) * shareWithin(a.x(), b.x(), from, to);
      }
    }
    return sum;
  }

  private static double shareWithin(double a, double b, double from, double to) {
    double low = Math.min(a, b);
    double high = Math.max(a, b);
    if (low == high) {
      return from <= low && low <= to ? 1 : 0;
    }
    return Math.max(0, Math.min(high, to) - Math.max(low, from)) / (high - low);
  }

  private static boolean isCut(LoosePiece piece, double place, double end) {
    return List.of(place, end).stream()
        .anyMatch(
            x ->
                reaches(piece.region().intersect(band(-FAR, x)))
                    && reaches(piece.region().intersect(band(x, FAR))));
  }

  /** A piece that only touches the cut leaves nothing, or a line, on its other side. */
  private static boolean reaches(Region part) {
    return !part.isEmpty() && part.bounds().width() > HALF_GRID;
  }

  /**
   * Stretches of an outline that set out from the cut and come back to it short of the far line.
   */
  private static long slivers(Ring ring, double cut, double far) {
    if (ring.bounds().minX() > cut || ring.bounds().maxX() < cut) {
      return 0;
    }
    List<Vec> closed = new ArrayList<>(ring.points());
    closed.add(closed.get(0));
    return band(Math.min(cut, far), Math.max(cut, far)).clip(new Line(closed)).stream()
        .map(Line::points)
        .filter(p -> isAt(p.get(0), cut) && isAt(p.get(p.size() - 1), cut))
        .filter(p -> p.stream().noneMatch(q -> isAt(q, far)))
        .filter(p -> p.stream().anyMatch(q -> !isAt(q, cut)))
        .count();
  }

  private static boolean isAt(Vec p, double x) {
    return Math.abs(p.x() - x) < HALF_GRID;
  }

  private static Region band(double from, double to) {
    return Region.rectangle(new Bounds(from, -FAR, to, FAR));
  }
}
