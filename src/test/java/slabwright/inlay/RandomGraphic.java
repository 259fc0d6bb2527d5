package slabwright.inlay;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Graphics for property tests: rings in rings, stars that cross themselves, squares that touch. */
public final class RandomGraphic {
  private final Random random;
  private final double size;

  /** The same seed gives the same graphic. */
  public RandomGraphic(long seed, double size) {
    this.random = new Random(seed);
    this.size = size;
  }

  /** One region of several outlines, filled even-odd; never empty. */
  public Region region() {
    Region region = outlines();
    while (region.isEmpty()) {
      region = outlines();
    }
    return region;
  }

  private Region outlines() {
    List<Ring> rings = new ArrayList<>();
    int shapes = 1 + random.nextInt(5);
    for (int i = 0; i < shapes; i++) {
      switch (random.nextInt(3)) {
        case 0 -> nested(rings);
        case 1 -> rings.add(star());
        default -> touching(rings);
      }
    }
    return Region.of(rings, FillRule.EVEN_ODD);
  }

  /** Disjoint colours, the later on top. */
  public List<Region> colours(int count) {
    List<Region> colours = new ArrayList<>();
    Region above = Region.empty();
    for (int i = 0; i < count; i++) {
      Region seen = region().minus(above);
      above = above.union(seen);
      colours.add(seen);
    }
    return colours;
  }

  private void nested(List<Ring> rings) {
    Vec middle = point();
    double radius = size * (0.1 + 0.3 * random.nextDouble());
    int corners = 3 + random.nextInt(20);
    for (int i = 0; i < 1 + random.nextInt(4); i++) {
      rings.add(wheel(middle, radius, 1, corners));
      radius *= 0.5 + 0.4 * random.nextDouble();
    }
  }

  private Ring star() {
    return wheel(point(), size * (0.1 + 0.3 * random.nextDouble()), 2, 5 + 2 * random.nextInt(3));
  }

  private void touching(List<Ring> rings) {
    double side = Math.rint(size / 20);
    double x = side * random.nextInt(16);
    double y = side * random.nextInt(16);
    rings.add(Ring.rectangle(x, y, x + side, y + side));
    rings.add(Ring.rectangle(x + side, y + side, x + 2 * side, y + 3 * side));
    rings.add(Ring.rectangle(x + side, y, x + 2 * side, y + side / 2));
  }

  private static Ring wheel(Vec middle, double radius, int step, int corners) {
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * i * step / corners;
      points.add(middle.plus(new Vec(Math.cos(angle), Math.sin(angle)).times(radius)));
    }
    return new Ring(points);
  }

  private Vec point() {
    return new Vec(size * random.nextDouble(), size * random.nextDouble());
  }
}
