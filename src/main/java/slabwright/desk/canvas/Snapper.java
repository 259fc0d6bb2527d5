package slabwright.desk.canvas;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.input.Snap;
import slabwright.shape.Line;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;

/**
 * Draws a touch to what is near: a corner, an edge, square or parallel to what is there, the grid.
 *
 * @param corners points to hold on to
 * @param edges chains to hold on to
 * @param grid pitch in mm; 0 for none
 */
record Snapper(List<Vec> corners, List<Line> edges, double grid) {
  public static final Snapper NONE = new Snapper(List.of(), List.of(), 0);

  public Snapper {
    corners = List.copyOf(corners);
    edges = List.copyOf(edges);
  }

  public Snapper withCorners(List<Vec> more) {
    List<Vec> all = new ArrayList<>(corners);
    all.addAll(more);
    return new Snapper(all, edges, grid);
  }

  /**
   * Where the touch goes.
   *
   * @param from the point a line is being drawn from, if one is
   * @param reach how far a touch is drawn, mm
   */
  public Snap snap(Vec raw, Optional<Vec> from, double reach) {
    return corner(raw, reach)
        .or(() -> from.flatMap(f -> direction(raw, f, reach)))
        .or(() -> edge(raw, reach))
        .orElseGet(() -> grid(raw, reach));
  }

  private Optional<Snap> corner(Vec raw, double reach) {
    return corners.stream()
        .filter(c -> c.distanceTo(raw) <= reach)
        .min(Comparator.comparingDouble(c -> c.distanceTo(raw)))
        .map(c -> Snap.of(c, Snap.Kind.CORNER));
  }

  private Optional<Snap> edge(Vec raw, double reach) {
    Snap best = null;
    double nearest = reach;
    for (Line e : edges) {
      for (int i = 0; i + 1 < e.points().size(); i++) {
        Vec a = e.points().get(i);
        Vec b = e.points().get(i + 1);
        Vec on = SegmentGeometry.nearest(a, b, raw);
        if (on.distanceTo(raw) < nearest) {
          nearest = on.distanceTo(raw);
          best = Snap.of(on, Snap.Kind.EDGE, Line.of(a, b));
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /** Level, upright, or square or parallel to an edge that is there. */
  private Optional<Snap> direction(Vec raw, Vec from, double reach) {
    record Way(Vec along, Snap.Kind kind) {}
    List<Way> ways = new ArrayList<>();
    ways.add(new Way(new Vec(1, 0), Snap.Kind.SQUARE));
    ways.add(new Way(new Vec(0, 1), Snap.Kind.SQUARE));
    for (Line e : edges) {
      if (e.points().size() == 2) {
        Vec d = e.points().get(1).minus(e.points().get(0)).unit();
        ways.add(new Way(d, Snap.Kind.PARALLEL));
        ways.add(new Way(d.left(), Snap.Kind.SQUARE));
      }
    }
    return ways.stream()
        .map(w -> Snap.of(SegmentGeometry.foot(from, w.along(), raw), w.kind()))
        .filter(s -> s.at().distanceTo(raw) <= reach && s.at().distanceTo(from) > 2 * reach)
        .min(Comparator.comparingDouble(s -> s.at().distanceTo(raw)))
        .map(s -> along(s, from, raw, reach));
  }

  /** On a held direction the length is drawn to corners abreast of it, else to edges and grid. */
  private Snap along(Snap s, Vec from, Vec raw, double reach) {
    Vec d = s.at().minus(from);
    for (Vec c : corners) {
      Vec foot = SegmentGeometry.foot(from, d, c);
      if (foot.distanceTo(s.at()) <= reach && foot.minus(from).dot(d) > 0) {
        return Snap.of(foot, s.kind(), Line.of(from, foot), Line.of(c, foot));
      }
    }
    Optional<Snap> on = edge(raw, reach);
    if (on.isPresent()) {
      Line e = on.get().guides().get(0);
      Vec dir = e.points().get(1).minus(e.points().get(0));
      Optional<Vec> x = SegmentGeometry.meeting(from, d, e.points().get(0), dir);
      if (x.isPresent() && x.get().distanceTo(raw) <= 2 * reach) {
        return Snap.of(x.get(), s.kind(), Line.of(from, x.get()), e);
      }
    }
    return Snap.of(rounded(s.at(), from), s.kind(), Line.of(from, s.at()));
  }

  private Vec rounded(Vec at, Vec from) {
    double length = at.distanceTo(from);
    if (grid <= 0 || length < grid) {
      return at;
    }
    return from.plus(at.minus(from).unit().times(Math.round(length / grid) * grid));
  }

  private Snap grid(Vec raw, double reach) {
    if (grid <= 0 || grid > reach * 4) {
      return Snap.free(raw);
    }
    double x = Math.round(raw.x() / grid) * grid;
    double y = Math.round(raw.y() / grid) * grid;
    return Snap.of(new Vec(x, y), Snap.Kind.GRID);
  }
}
