package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * A point of an opening's edge.
 *
 * @param along unit vector along the edge, the opening on its left (x to y)
 * @param ring which of the rings it lies on
 */
record EdgeSample(Vec at, Vec along, int ring) {
  /** Away from the opening. */
  Vec outward() {
    return along.left().times(-1);
  }

  /** Every corner, and points between them at most {@code step} apart. */
  static List<EdgeSample> dense(List<Ring> rings, double step) {
    List<EdgeSample> samples = new ArrayList<>();
    for (int r = 0; r < rings.size(); r++) {
      List<Vec> p = rings.get(r).points();
      for (int i = 0; i < p.size(); i++) {
        Vec a = p.get(i);
        Vec b = p.get((i + 1) % p.size());
        Vec u = b.minus(a).unit();
        int n = Math.max(1, (int) Math.ceil(a.distanceTo(b) / step));
        for (int k = 0; k < n; k++) {
          samples.add(new EdgeSample(a.towards(b, (double) k / n), u, r));
        }
      }
    }
    return samples;
  }

  /** Points {@code step} apart, corners or not. */
  static List<EdgeSample> spaced(List<Ring> rings, double step) {
    List<EdgeSample> samples = new ArrayList<>();
    double carried = step / 2;
    for (int r = 0; r < rings.size(); r++) {
      List<Vec> p = rings.get(r).points();
      for (int i = 0; i < p.size(); i++) {
        Vec a = p.get(i);
        Vec b = p.get((i + 1) % p.size());
        double length = a.distanceTo(b);
        double at = step - carried;
        for (; at <= length; at += step) {
          samples.add(new EdgeSample(a.towards(b, at / length), b.minus(a).unit(), r));
        }
        carried = length - (at - step);
      }
    }
    return samples;
  }
}
