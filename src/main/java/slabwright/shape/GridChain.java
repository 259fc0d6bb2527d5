package slabwright.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import slabwright.shape.ints.IntList;

/** A ring of an arrangement as a closed chain in whole grid steps, without repeated points. */
final class GridChain {
  private static final int RUN = 40;

  private final int layer;
  private final int ring;
  private final Coordinate[] steps;
  private final int[] segments;

  private GridChain(int layer, int ring, Coordinate[] steps, int[] segments) {
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
  static List<GridChain> of(List<Layer> layers) {
    List<GridChain> chains = new ArrayList<>();
    for (int layer = 0; layer < layers.size(); layer++) {
      List<Ring> rings = layers.get(layer).rings();
      for (int ring = 0; ring < rings.size(); ring++) {
        GridChain chain = of(layer, ring, rings.get(ring).points());
        if (chain.steps.length >= 3) {
          chains.add(chain);
        }
      }
    }
    return chains;
  }

  private static GridChain of(int layer, int ring, List<Vec> points) {
    List<Coordinate> steps = new ArrayList<>(points.size() + 1);
    IntList segments = new IntList();
    for (int i = 0; i <= points.size() && !points.isEmpty(); i++) {
      Coordinate step = step(points.get(i % points.size()));
      if (steps.isEmpty() || !steps.get(steps.size() - 1).equals2D(step)) {
        steps.add(step);
        segments.add(i - 1);
      }
    }
    return new GridChain(layer, ring, steps.toArray(new Coordinate[0]), segments.toArray());
  }

  /** The input segment that ran into point {@code i} of the chain, for i at least 1. */
  int segmentInto(int i) {
    return segments[i];
  }

  /**
   * The chain in runs of a few short segments or one long one. The noder's index keeps boxes of
   * runs, and the boxes of long bent runs that lie inside one another would all overlap.
   */
  void runs(Consumer<Coordinate[]> run) {
    Envelope box = new Envelope();
    for (Coordinate step : steps) {
      box.expandToInclude(step);
    }
    double longest = box.getDiameter() / 8;
    int from = 0;
    for (int i = 1; i < steps.length; i++) {
      boolean last = i == steps.length - 1;
      if (last
          || i - from == RUN
          || steps[i].distance(steps[i - 1]) > longest
          || steps[i].distance(steps[i + 1]) > longest) {
        run.accept(Arrays.copyOfRange(steps, from, i + 1));
        from = i;
      }
    }
  }

  private static Coordinate step(Vec p) {
    if (!Double.isFinite(p.x()) || !Double.isFinite(p.y())) {
      throw new IllegalArgumentException("a ring has a point that is not a number: " + p);
    }
    return new Coordinate(
        Math.round(p.x() * Jts.STEPS_PER_MM), Math.round(p.y() * Jts.STEPS_PER_MM));
  }
}
