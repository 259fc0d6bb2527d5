package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RegionDistanceTest {
  /** Two rings of 100 corners, one with a hole, and the plain distance as the other opinion. */
  @Test
  void points_are_near_where_the_plain_distance_says_so() {
    Region disc = Region.of(Arcs.circle(new Vec(0, 0), 100, 0.05));
    Region hole = Region.of(Arcs.circle(new Vec(10, 0), 40, 0.05));
    Region other = Region.of(Arcs.circle(new Vec(260, 30), 50, 0.05));
    Region region = Region.union(List.of(disc.minus(hole), other));
    RegionDistance near = new RegionDistance(region);
    Random random = new Random(5);
    for (int i = 0; i < 2_000; i++) {
      Vec p = new Vec(500 * random.nextDouble() - 150, 400 * random.nextDouble() - 200);
      double mm = 60 * random.nextDouble();
      assertThat(near.isWithin(p, mm)).as("%s %s", p, mm).isEqualTo(region.distanceTo(p) <= mm);
    }
  }

  @Test
  void nothing_is_near_an_empty_region() {
    assertThat(new RegionDistance(Region.empty()).isWithin(Vec.ZERO, 1e9)).isFalse();
  }
}
