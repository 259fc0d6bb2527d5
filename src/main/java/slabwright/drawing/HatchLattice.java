package slabwright.drawing;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Staggered small marks on a lattice; a mark that would cross the region's edge is left out. */
final class HatchLattice {
  private final Hatch hatch;
  private final double pitch;
  private final double halfWidth;
  private final double halfHeight;

  private HatchLattice(Hatch hatch) {
    this.hatch = hatch;
    boolean dots = hatch.pattern() == HatchPattern.DOTS;
    this.pitch = hatch.pitch() * (dots ? 1 : 1.7);
    this.halfWidth =
        switch (hatch.pattern()) {
          case CROSSES -> pitch * 0.16;
          case DASHES -> pitch * 0.27;
          default -> pitch * 0.13;
        };
    this.halfHeight = hatch.pattern() == HatchPattern.DASHES ? hatch.pen().width() / 2 : halfWidth;
  }

  static Stroke of(Hatch h, Bounds window) {
    return new HatchLattice(h).stroke(window);
  }

  private Stroke stroke(Bounds window) {
    Affine moved = Affine.move(-hatch.origin().x(), -hatch.origin().y());
    Bounds seen = HatchParts.seen(hatch, window, moved);
    List<Line> marks = new ArrayList<>();
    if (!seen.isEmpty()) {
      List<Ring> rings = hatch.rings().stream().map(r -> r.map(moved)).toList();
      for (Vec at : lattice(rings, seen)) {
        mark(marks, at.plus(hatch.origin()));
      }
    }
    Pen pen = hatch.pen();
    return hatch.pattern() == HatchPattern.DOTS
        ? Stroke.lines(Pen.of(2 * halfWidth, pen.colour()).rounded(), marks)
        : Stroke.lines(pen, marks);
  }

  /** The middles of all marks that lie wholly inside. */
  private List<Vec> lattice(List<Ring> rings, Bounds seen) {
    double rise = pitch / 2;
    int low = HatchParts.first(seen, rise);
    int high = HatchParts.last(seen, rise);
    ScanLines middle = ScanLines.of(rings, rise, 0, low, high);
    ScanLines above = ScanLines.of(rings, rise, -halfHeight, low, high);
    ScanLines below = ScanLines.of(rings, rise, halfHeight, low, high);
    List<Vec> found = new ArrayList<>();
    for (int k = low; k <= high; k++) {
      double shift = Math.floorMod(k, 2) * rise;
      for (double x = start(seen, shift); x <= seen.maxX(); x += pitch) {
        double x0 = x - halfWidth;
        double x1 = x + halfWidth;
        if (middle.holds(k, x0, x1) && above.holds(k, x0, x1) && below.holds(k, x0, x1)) {
          found.add(new Vec(x, k * rise));
        }
      }
    }
    return found;
  }

  private double start(Bounds seen, double shift) {
    return Math.ceil((seen.minX() - shift) / pitch) * pitch + shift;
  }

  private void mark(List<Line> marks, Vec at) {
    double w = halfWidth;
    double x = at.x();
    double y = at.y();
    switch (hatch.pattern()) {
      case CROSSES -> {
        marks.add(Line.of(new Vec(x - w, y - w), new Vec(x + w, y + w)));
        marks.add(Line.of(new Vec(x - w, y + w), new Vec(x + w, y - w)));
      }
      case DASHES -> marks.add(Line.of(new Vec(x - w, y), new Vec(x + w, y)));
      default -> marks.add(Line.of(at, at));
    }
  }
}
