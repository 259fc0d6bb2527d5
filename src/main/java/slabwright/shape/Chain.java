package slabwright.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** A ring of an arrangement as a closed chain in whole grid steps, without repeated points. */
final class Chain {
  private final int layer;
  private final int ring;
  private final Coordinate[] steps;
  private final int[] segments;

  private Chain(int layer, int ring, Coordinate[] steps, int[] segments) {
    this.layer = layer;
    this.ring = ring;
    this.steps = steps;
    this.segments = segments;
  }

  /** Position of the layer in the list of layers. */
  int layer() {
    return layer;
  }

  int ring() {
    return ring;
  }

  Coordinate[] steps() {
    return steps;
  }

  /** All rings that still have two different points on the grid. Layers by position. */
  static List<Chain> of(List<Layer> layers) {
    List<Chain> chains = new ArrayList<>();
    for (int layer = 0; layer < layers.size(); layer++) {
      List<Ring> rings = layers.get(layer).rings();
      for (int ring = 0; ring < rings.size(); ring++) {
        Chain chain = of(layer, ring, rings.get(ring).points());
        if (chain.steps.length >= 3) {
          chains.add(chain);
        }
      }
    }
    return chains;
  }

  private static Chain of(int layer, int ring, List<Vec> points) {
    List<Coordinate> steps = new ArrayList<>(points.size() + 1);
    Ints segments = new Ints();
    for (int i = 0; i <= points.size() && !points.isEmpty(); i++) {
      Coordinate step = step(points.get(i % points.size()));
      if (steps.isEmpty() || !steps.get(steps.size() - 1).equals2D(step)) {
        steps.add(step);
        segments.add(i - 1);
      }
    }
    return new Chain(layer, ring, steps.toArray(new Coordinate[0]), segments.toArray());
  }

  /** The input segment that ran into point {@code i} of the chain, for i at least 1. */
  int segmentInto(int i) {
    return segments[i];
  }

  private static Coordinate step(Vec p) {
    if (!Double.isFinite(p.x()) || !Double.isFinite(p.y())) {
      throw new IllegalArgumentException("a ring has a point that is not a number: " + p);
    }
    return new Coordinate(
        Math.round(p.x() * Jts.STEPS_PER_MM), Math.round(p.y() * Jts.STEPS_PER_MM));
  }
}
