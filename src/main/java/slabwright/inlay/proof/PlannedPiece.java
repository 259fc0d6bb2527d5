package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** One piece of vinyl as planned: the blank, or a panel of it, with the openings that lie in it. */
final class PlannedPiece {
  private static final double SAMPLE_SHARE = 1 / 900.0;
  private static final double FIT_SAMPLES = 1800;
  private static final double MOST_UNSURE = 0.3;

  final String panel;
  final Bounds bounds;
  final Region openings;
  final List<RingMoments> rings;
  final List<Vec> boundary;
  private final List<EdgeSample> edgeSamples;
  private final Bitmap coarse;
  private final Bitmap fine;

  /**
   * @param panel its name; empty for the whole blank
   */
  PlannedPiece(String panel, Bounds bounds, Region openings) {
    this.panel = panel;
    this.bounds = bounds;
    this.openings = openings;
    List<Ring> all = openings.rings();
    coarse = Bitmap.of(all, bounds, 72);
    fine = Bitmap.of(all, bounds, 480);
    rings = new ArrayList<>();
    all.forEach(r -> rings.add(RingMoments.of(r)));
    rings.sort(Comparator.comparingDouble(RingMoments::area).reversed());
    boundary = samples(all);
    edgeSamples = edgeSamples(all);
  }

  RingMoments edge() {
    return RingMoments.of(
        Ring.rectangle(bounds.minX(), bounds.minY(), bounds.maxX(), bounds.maxY()));
  }

  /** Points along the openings' boundary, close enough for refining a pose. */
  private static List<Vec> samples(List<Ring> rings) {
    double length = rings.stream().mapToDouble(Ring::length).sum();
    return ContourSamples.along(rings, length * SAMPLE_SHARE);
  }

  /** Points of the openings' edges to fit by; where a panel is cut through one is no edge of it. */
  List<EdgeSample> edgeSamples() {
    return edgeSamples;
  }

  private List<EdgeSample> edgeSamples(List<Ring> rings) {
    double length = rings.stream().mapToDouble(Ring::length).sum();
    Bounds inside = bounds.grown(-1);
    return EdgeSample.spaced(rings, length / FIT_SAMPLES).stream()
        .filter(s -> inside.contains(s.at()))
        .toList();
  }

  /** How much of an overlap is nothing but the size of the cells it is counted in. */
  double unsureOverlap() {
    return Math.min(MOST_UNSURE, fine.cell * openings.boundaryLength() / (2 * openings.area()));
  }

  PoseFit roughly(Pose pose, Bitmap drawn) {
    return fit(pose, drawn, coarse);
  }

  PoseFit closely(Pose pose, Bitmap drawn) {
    return fit(pose, drawn, fine);
  }

  /** Compares cell by cell; the drawing may show the openings or the mask. */
  private static PoseFit fit(Pose pose, Bitmap drawn, Bitmap plan) {
    int open = 0;
    int shown = 0;
    int both = 0;
    for (int row = 0; row < plan.rows; row++) {
      double y = plan.minY + (row + 0.5) * plan.cell;
      for (int column = 0; column < plan.columns; column++) {
        Vec q = pose.apply(new Vec(plan.minX + (column + 0.5) * plan.cell, y));
        boolean o = plan.cellIn(column, row);
        boolean s = drawn.has(q.x(), q.y());
        open += o ? 1 : 0;
        shown += s ? 1 : 0;
        both += o && s ? 1 : 0;
      }
    }
    int all = plan.rows * plan.columns;
    PoseFit asOpenings = fit(pose, open, shown, both, false);
    PoseFit asMask = fit(pose, open, all - shown, open - both, true);
    return asMask.overlap() > asOpenings.overlap() ? asMask : asOpenings;
  }

  private static PoseFit fit(Pose pose, int open, int shown, int both, boolean mask) {
    double inside = share(both, Math.min(open, shown));
    return new PoseFit(pose, share(both, open + shown - both), inside, mask);
  }

  private static double share(int part, int whole) {
    return whole == 0 ? 0 : part / (double) whole;
  }
}
