package slabwright.inlay.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** Along a lap 10 mm wide and 2 m long: arms of 10 / 2 − 1 = 4 mm, clear of all by twice that. */
class WitnessMarkPlacerTest {
  private static final Bounds LAP = new Bounds(500, 100, 510, 2_100);

  private static final Region FAR = Region.rectangle(new Bounds(5_000, 0, 5_100, 100));

  private static List<Vec> places(Region openings) {
    return new WitnessMarkPlacer(openings, StripDirection.DOWN, 10)
        .on(LAP, false).stream().map(WitnessMark::at).toList();
  }

  @Test
  void marks_stand_near_both_ends_and_every_metre_between() {
    assertThat(places(FAR))
        .containsExactly(new Vec(505, 116), new Vec(505, 1_100), new Vec(505, 2_084));
  }

  /** From 1,050 to 1,150 it is open: by 10 mm on, 1,160 is the first place with 8 mm to spare. */
  @Test
  void a_mark_gives_way_to_an_opening_along_the_lap() {
    assertThat(places(Region.rectangle(new Bounds(480, 1_050, 530, 1_150))).get(1))
        .isEqualTo(new Vec(505, 1_160));
    assertThat(places(Region.rectangle(new Bounds(480, 1_080, 530, 1_190))).get(1))
        .isEqualTo(new Vec(505, 1_070));
  }

  @Test
  void where_half_a_metre_both_ways_is_open_no_mark_is_set() {
    assertThat(places(Region.rectangle(new Bounds(480, 590, 530, 1_610))))
        .containsExactly(new Vec(505, 116), new Vec(505, 2_084));
  }

  @Test
  void marks_of_a_joint_run_across_the_strips() {
    List<WitnessMark> marks =
        new WitnessMarkPlacer(FAR, StripDirection.DOWN, 10).on(new Bounds(0, 700, 900, 710), true);
    assertThat(marks)
        .extracting(WitnessMark::at)
        .containsExactly(new Vec(16, 705), new Vec(884, 705));
  }

  @Test
  void arms_are_between_2_and_6_mm_long() {
    assertThat(arm(2)).isEqualTo(2);
    assertThat(arm(10)).isEqualTo(4);
    assertThat(arm(40)).isEqualTo(6);
  }

  private static double arm(double overlap) {
    return new WitnessMarkPlacer(FAR, StripDirection.DOWN, overlap).on(LAP, false).get(0).arm();
  }
}
