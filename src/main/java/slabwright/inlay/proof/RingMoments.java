package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * What a ring looks like whatever its place, size and turn: complex moments about its centroid
 * (Flusser 2000), {@code c_pq = ∫ z^p conj(z)^q dA}, scaled by area. A turn by t multiplies c_pq by
 * {@code e^(i(p-q)t)}; mirroring at the x axis conjugates it.
 *
 * @param area mm², positive
 * @param moments c11 (real), then c20, c21, c30, c31, c40 as pairs of real and imaginary part
 */
record RingMoments(Ring ring, Vec centroid, double area, double c11, List<Complex> moments) {
  /** p - q of each of {@link #moments}. */
  static final List<Integer> ORDER = List.of(2, 1, 3, 2, 4);

  private static final int[][] PQ = {{2, 0}, {2, 1}, {3, 0}, {3, 1}, {4, 0}};

  /** A complex number. */
  record Complex(double re, double im) {
    double size() {
      return Math.hypot(re, im);
    }

    double angle() {
      return Math.atan2(im, re);
    }

    Complex plus(Complex o) {
      return new Complex(re + o.re, im + o.im);
    }

    Complex times(Complex o) {
      return new Complex(re * o.re - im * o.im, re * o.im + im * o.re);
    }

    Complex times(double k) {
      return new Complex(re * k, im * k);
    }

    Complex conjugate() {
      return new Complex(re, -im);
    }
  }

  static RingMoments of(Ring ring) {
    List<Vec> p = ring.points();
    double twice = 0;
    double x = 0;
    double y = 0;
    Vec origin = p.get(0);
    for (int i = 0; i < p.size(); i++) {
      Vec a = p.get(i).minus(origin);
      Vec b = p.get((i + 1) % p.size()).minus(origin);
      double cross = a.cross(b);
      twice += cross;
      x += (a.x() + b.x()) * cross;
      y += (a.y() + b.y()) * cross;
    }
    if (twice == 0) {
      return new RingMoments(ring, origin, 0, 0, List.of());
    }
    Vec centroid = origin.plus(new Vec(x / (3 * twice), y / (3 * twice)));
    double area = Math.abs(twice) / 2;
    List<Complex> moments = new ArrayList<>();
    for (int k = 0; k < PQ.length; k++) {
      moments.add(moment(p, centroid, area, PQ[k][0], PQ[k][1], Math.signum(twice)));
    }
    double c11 = moment(p, centroid, area, 1, 1, Math.signum(twice)).re;
    return new RingMoments(ring, centroid, area, c11, moments);
  }

  /**
   * Green's theorem: {@code c_pq = 1/(2i(q+1)) ∮ z^p conj(z)^(q+1) dz}, each edge by Gauss's rule
   * of four points, exact to degree 7.
   */
  private static Complex moment(
      List<Vec> points, Vec centroid, double area, int p, int q, double sense) {
    double r = Math.sqrt(area);
    Complex sum = new Complex(0, 0);
    for (int i = 0; i < points.size(); i++) {
      Vec a = points.get(i).minus(centroid).times(1 / r);
      Vec b = points.get((i + 1) % points.size()).minus(centroid).times(1 / r);
      Complex dz = new Complex(b.x() - a.x(), b.y() - a.y());
      Complex edge = new Complex(0, 0);
      for (int g = 0; g < GAUSS_AT.length; g++) {
        Vec z = a.towards(b, GAUSS_AT[g]);
        edge = edge.plus(power(new Complex(z.x(), z.y()), p, q + 1).times(GAUSS_WEIGHT[g]));
      }
      sum = sum.plus(edge.times(dz));
    }
    return sum.times(new Complex(0, -1)).times(sense / (2 * (q + 1)));
  }

  private static final double[] GAUSS_AT = {
    0.0694318442029737, 0.3300094782075719, 0.6699905217924281, 0.9305681557970263
  };
  private static final double[] GAUSS_WEIGHT = {
    0.1739274225687269, 0.3260725774312731, 0.3260725774312731, 0.1739274225687269
  };

  private static Complex power(Complex z, int p, int q) {
    Complex out = new Complex(1, 0);
    for (int i = 0; i < p; i++) {
      out = out.times(z);
    }
    for (int i = 0; i < q; i++) {
      out = out.times(z.conjugate());
    }
    return out;
  }

  /** How unlike two shapes are, 0 alike; turn, size, place and mirroring do not count. */
  double dissimilarity(RingMoments o) {
    double sum = Math.abs(c11 - o.c11) / Math.max(c11, o.c11);
    for (int k = 0; k < moments.size(); k++) {
      double scale = Math.pow(Math.max(c11, o.c11), (PQ[k][0] + PQ[k][1]) / 2.0);
      sum += Math.abs(moments.get(k).size() - o.moments.get(k).size()) / scale;
    }
    return sum;
  }
}
