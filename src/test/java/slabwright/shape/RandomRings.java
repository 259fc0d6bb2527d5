package slabwright.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Rings of every kind, and the winding number of a point reckoned straight from its definition. */
final class RandomRings {
  private final Random random;

  RandomRings(long seed) {
    random = new Random(seed);
  }

  /** Corners anywhere in a square of 100 mm; some on a coarse lattice, so that edges coincide. */
  Ring any() {
    int n = 3 + random.nextInt(6);
    boolean lattice = random.nextBoolean();
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      points.add(
          lattice
              ? new Vec(10 * random.nextInt(11), 10 * random.nextInt(11))
              : new Vec(100 * random.nextDouble(), 100 * random.nextDouble()));
    }
    return new Ring(points);
  }

  List<Ring> some(int atMost) {
    List<Ring> rings = new ArrayList<>();
    int n = 1 + random.nextInt(atMost);
    for (int i = 0; i < n; i++) {
      rings.add(i > 0 && random.nextInt(8) == 0 ? rings.get(i - 1) : any());
    }
    return rings;
  }

  FillRule rule() {
    return random.nextBoolean() ? FillRule.NONZERO : FillRule.EVEN_ODD;
  }

  double fraction() {
    return random.nextDouble();
  }

  Vec point() {
    return new Vec(100 * random.nextDouble(), 100 * random.nextDouble());
  }

  /** By crossings of a ray to the right: up counts +1, down -1 (SVG 2, fill-rule). */
  static int winding(List<Ring> rings, Vec p) {
    int sum = 0;
    for (Ring ring : rings) {
      for (int i = 0; i < ring.points().size(); i++) {
        Vec a = ring.points().get(i);
        Vec b = ring.points().get((i + 1) % ring.points().size());
        if (a.y() <= p.y() != b.y() <= p.y()) {
          double x = a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
          sum += x > p.x() ? (a.y() <= p.y() ? 1 : -1) : 0;
        }
      }
    }
    return sum;
  }
}
