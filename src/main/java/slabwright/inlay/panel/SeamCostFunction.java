package slabwright.inlay.panel;

import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.stencil.LoosePiece;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;

/**
 * What one seam costs at any place, for all stencils of an inlay together: opening edge within
 * reach of the lap, loose pieces that one of its two panel edges cuts, and slivers at those edges.
 *
 * <p>For an inner joint only what lies inside its own strip counts.
 */
final class SeamCostFunction {
  private final List<RingCoordinates> edges;
  private final List<RingCoordinates> loose;
  private final SeamSpan span;
  private final EdgeLengthIndex field;
  private final List<double[]> occupied = new ArrayList<>();
  private final List<double[]> looseReach = new ArrayList<>();

  private SeamCostFunction(
      List<RingCoordinates> edges, List<RingCoordinates> loose, SeamSpan span) {
    this.edges = edges;
    this.loose = loose;
    this.span = span;
    this.field = field();
    loose.forEach(c -> addReach(c, looseReach));
    edges.forEach(c -> addReach(c, occupied));
  }

  static SeamCostFunction of(StencilSet set, StripDirection turn) {
    List<RingCoordinates> edges = new ArrayList<>();
    List<RingCoordinates> loose = new ArrayList<>();
    for (Stencil stencil : set.stencils()) {
      stencil.openings().rings().forEach(r -> edges.add(RingCoordinates.of(r, turn)));
      for (LoosePiece piece : stencil.loosePieces()) {
        piece.region().shells().forEach(r -> loose.add(RingCoordinates.of(r, turn)));
      }
    }
    return new SeamCostFunction(edges, loose, SeamSpan.ALL);
  }

  /** For joints across the strip from {@code low} to {@code high}. */
  SeamCostFunction inside(double low, double high) {
    return new SeamCostFunction(
        edges.stream().map(RingCoordinates::swapped).toList(),
        loose.stream().map(RingCoordinates::swapped).toList(),
        new SeamSpan(low, high));
  }

  /** The cost of a seam whose lap runs from {@code place} to {@code place + overlap}. */
  SeamCost at(double place, double overlap, SeamWeights w) {
    double end = place + overlap;
    double edge = field.between(place - w.near(), end + w.near());
    int cut = 0;
    for (double[] piece : looseReach) {
      cut += within(piece, place) || within(piece, end) ? 1 : 0;
    }
    int slivers = 0;
    for (RingCoordinates ring : edges) {
      slivers += ring.shallowRuns(place, 1, w.sliverWidth(), span);
      slivers += ring.shallowRuns(end, -1, w.sliverWidth(), span);
    }
    return SeamCost.of(edge, cut, slivers, 0, w);
  }

  /** Where no opening edge lies, as {from, to} in rising order, between 0 and {@code end}. */
  List<double[]> gaps(double end) {
    List<double[]> sorted = new ArrayList<>(occupied);
    sorted.sort((a, b) -> Double.compare(a[0], b[0]));
    List<double[]> gaps = new ArrayList<>();
    double free = 0;
    for (double[] taken : sorted) {
      if (taken[0] > free) {
        gaps.add(new double[] {free, taken[0]});
      }
      free = Math.max(free, taken[1]);
    }
    if (free < end) {
      gaps.add(new double[] {free, end});
    }
    return gaps;
  }

  private static boolean within(double[] reach, double place) {
    return reach[0] < place - SeamPlaceSearch.SLACK && place + SeamPlaceSearch.SLACK < reach[1];
  }

  private void addReach(RingCoordinates ring, List<double[]> to) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < ring.u.length; i++) {
      int j = (i + 1) % ring.u.length;
      double[] part = span.part(ring.v[i], ring.v[j]);
      if (part[0] <= part[1]) {
        double a = ring.u[i] + part[0] * (ring.u[j] - ring.u[i]);
        double b = ring.u[i] + part[1] * (ring.u[j] - ring.u[i]);
        low = Math.min(low, Math.min(a, b));
        high = Math.max(high, Math.max(a, b));
      }
    }
    if (low <= high) {
      to.add(new double[] {low, high});
    }
  }

  private EdgeLengthIndex field() {
    int n = edges.stream().mapToInt(c -> c.u.length).sum();
    double[] from = new double[n];
    double[] to = new double[n];
    double[] len = new double[n];
    int used = 0;
    for (RingCoordinates ring : edges) {
      for (int i = 0; i < ring.u.length; i++) {
        int j = (i + 1) % ring.u.length;
        double[] part = span.part(ring.v[i], ring.v[j]);
        double share = Math.max(0, part[1] - part[0]);
        double a = ring.u[i] + part[0] * (ring.u[j] - ring.u[i]);
        double b = a + share * (ring.u[j] - ring.u[i]);
        from[used] = Math.min(a, b);
        to[used] = Math.max(a, b);
        len[used++] = share * Math.hypot(ring.u[j] - ring.u[i], ring.v[j] - ring.v[i]);
      }
    }
    return new EdgeLengthIndex(from, to, len);
  }
}
