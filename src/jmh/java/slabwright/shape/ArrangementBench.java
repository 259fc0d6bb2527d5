package slabwright.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The labelled partition of overlapping wavy rings against a baseline in the same run: the cascaded
 * union of the same rings by JTS, which gives less (one region, no labels).
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ArrangementBench {
  @Param({"10000", "100000"})
  int segments;

  private List<Layer> layers;
  private List<Geometry> polygons;

  /** Rings of 200 sides strewn so that each overlaps a few others. */
  @Setup
  public void strew() {
    Random random = new Random(1);
    int rings = segments / 200;
    double side = 1000 * Math.sqrt(rings);
    layers = new ArrayList<>();
    polygons = new ArrayList<>();
    for (int i = 0; i < rings; i++) {
      Ring ring = wavy(random, random.nextDouble() * side, random.nextDouble() * side);
      layers.add(new Layer(i, List.of(ring), FillRule.NONZERO));
      polygons.add(Jts.FACTORY.createPolygon(Jts.closed(ring)));
    }
  }

  private static Ring wavy(Random random, double x, double y) {
    double r = 500 + 400 * random.nextDouble();
    List<Vec> points = new ArrayList<>();
    for (int k = 0; k < 200; k++) {
      double a = 2 * Math.PI * k / 200;
      double wave = r * (1 + 0.15 * Math.sin(9 * a));
      points.add(new Vec(x + wave * Math.cos(a), y + wave * Math.sin(a)));
    }
    return new Ring(points);
  }

  /** Ours: every face labelled by the topmost ring. */
  @Benchmark
  public Map<Integer, Region> partition() {
    return Arrangement.of(layers)
        .partition(a -> a.isEmpty() ? Optional.empty() : Optional.of(a.top()));
  }

  /** Baseline. */
  @Benchmark
  public Geometry baselineCascadedUnion() {
    return UnaryUnionOp.union(polygons);
  }
}
