package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;

class PoseSetTest {
  @Test
  void poses_kept_are_those_that_comparing_each_with_all_before_it_keeps() {
    Random random = new Random(20_261_128);
    PoseSet set = new PoseSet();
    List<Pose> plain = new ArrayList<>();
    for (int i = 0; i < 3_000; i++) {
      Pose pose = anyOf(random, plain);
      set.add(pose);
      if (plain.stream().noneMatch(p -> alike(p, pose))) {
        plain.add(pose);
      }
    }
    assertThat(plain).hasSizeBetween(500, 2_900);
    assertThat(set.list()).isEqualTo(plain);
  }

  /** Half of them hard by one that is there: about as far off as two may be and still be alike. */
  private static Pose anyOf(Random random, List<Pose> there) {
    if (there.isEmpty() || random.nextBoolean()) {
      double scale = Math.exp(random.nextDouble() * 8 - 6);
      Vec to = new Vec(random.nextGaussian() * 3_000, random.nextGaussian() * 3_000);
      double turn = random.nextDouble() * 6;
      return Pose.taking(new Vec(0, 0), to, scale, turn, random.nextBoolean());
    }
    Pose by = there.get(random.nextInt(there.size()));
    double s = by.scale();
    return new Pose(
        by.mirrored(),
        by.re() + s * random.nextGaussian() * 0.006,
        by.im() + s * random.nextGaussian() * 0.006,
        by.dx() + s * random.nextGaussian() * 3,
        by.dy() + s * random.nextGaussian() * 3);
  }

  private static boolean alike(Pose a, Pose b) {
    double s = Math.max(a.scale(), b.scale());
    return a.mirrored() == b.mirrored()
        && Math.hypot(a.re() - b.re(), a.im() - b.im()) < 0.01 * s
        && Math.hypot(a.dx() - b.dx(), a.dy() - b.dy()) < 5 * s;
  }
}
