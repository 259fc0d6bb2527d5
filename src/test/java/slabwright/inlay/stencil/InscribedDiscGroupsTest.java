package slabwright.inlay.stencil;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;

/** Discs by the places of their middles; those within 10 mm of each other are one place. */
class InscribedDiscGroupsTest {
  private static InscribedDisc disc(double x, double y, double radius) {
    Vec c = new Vec(x, y);
    return new InscribedDisc(c.plus(new Vec(radius, 0)), c, radius, c.minus(new Vec(radius, 0)));
  }

  private static double[] radii(InscribedDisc... discs) {
    return new InscribedDiscGroups(List.of(discs), 10)
        .narrowest().stream().mapToDouble(InscribedDisc::radius).sorted().toArray();
  }

  @Test
  void of_one_place_the_narrowest_is_kept() {
    assertThat(radii(disc(0, 0, 3), disc(4, 4, 2), disc(-4, 4, 5))).containsExactly(2);
  }

  @Test
  void just_as_far_as_the_reach_is_near_and_a_little_more_is_not_whichever_way() {
    for (Vec way : List.of(new Vec(1, 0), new Vec(0, 1), new Vec(0.6, 0.8), new Vec(-0.8, 0.6))) {
      Vec near = way.times(10);
      Vec far = way.times(10.001);
      assertThat(radii(disc(0, 0, 2), disc(near.x(), near.y(), 3))).as("%s", way).hasSize(1);
      assertThat(radii(disc(0, 0, 2), disc(far.x(), far.y(), 3))).as("%s", way).hasSize(2);
    }
  }

  @Test
  void a_chain_of_near_ones_is_one_place_in_whatever_order_they_come() {
    assertThat(radii(disc(0, 0, 4), disc(9, 0, 3), disc(18, 0, 2), disc(27, 0, 5)))
        .containsExactly(2);
    assertThat(radii(disc(0, 0, 4), disc(18, 0, 2), disc(9, 0, 3))).containsExactly(2);
  }

  /** Against joining every pair that is near until nothing changes. */
  @Test
  void scattered_discs_fall_into_the_groups_that_looking_at_every_pair_finds() {
    Random random = new Random(7);
    List<InscribedDisc> discs = new ArrayList<>();
    for (int i = 0; i < 120; i++) {
      discs.add(disc(120 * random.nextDouble() - 60, 90 * random.nextDouble() - 45, 1 + i / 500.0));
    }
    int[] group = IntStream.range(0, discs.size()).toArray();
    for (boolean more = true; more; ) {
      more = false;
      for (int i = 0; i < group.length; i++) {
        for (int j = 0; j < i; j++) {
          Vec a = discs.get(i).centre();
          if (group[i] != group[j] && a.distanceTo(discs.get(j).centre()) <= 10) {
            group[i] = Math.min(group[i], group[j]);
            group[j] = group[i];
            more = true;
          }
        }
      }
    }
    double[] expected =
        IntStream.of(group)
            .distinct()
            .mapToDouble(
                g ->
                    IntStream.range(0, group.length)
                        .filter(i -> group[i] == g)
                        .mapToDouble(i -> discs.get(i).radius())
                        .min()
                        .orElseThrow())
            .sorted()
            .toArray();
    assertThat(expected.length).isBetween(5, 60);
    assertThat(radii(discs.toArray(InscribedDisc[]::new))).containsExactly(expected);
  }
}
