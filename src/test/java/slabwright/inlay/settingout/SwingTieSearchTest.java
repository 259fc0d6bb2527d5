package slabwright.inlay.settingout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** Two tapes to a point on a bare floor of 20 m by 20 m, its corners where they are put. */
class SwingTieSearchTest {
  private static final Region FLOOR = box(-10_000, -10_000, 10_000, 10_000);
  private static final SettingOutParameters RULES = SettingOutParameters.usual();

  private static Optional<SwingTies> to(Vec p, Vec... corners) {
    List<KnownCorner> known = new ArrayList<>();
    for (Vec c : corners) {
      known.add(new KnownCorner(known.size() + 1, corners.length, c));
    }
    return new SwingTieSearch(FLOOR, known, RULES).to(p);
  }

  private static Vec at(double degrees, double mm) {
    double t = Math.toRadians(degrees);
    return new Vec(mm * Math.cos(t), mm * Math.sin(t));
  }

  @Test
  void two_tapes_have_their_lengths_angle_and_side() {
    SwingTies ties = to(Vec.ZERO, new Vec(-3_000, 0), new Vec(0, -4_000)).orElseThrow();
    assertThat(ties.fromFirst()).isEqualTo(3_000);
    assertThat(ties.fromSecond()).isEqualTo(4_000);
    assertThat(ties.angle()).isCloseTo(90, within(1e-9));
    assertThat(ties.side()).isEqualTo(Hand.LEFT);
    assertThat(to(Vec.ZERO, new Vec(0, -4_000), new Vec(-3_000, 0)).orElseThrow().side())
        .isEqualTo(Hand.RIGHT);
  }

  /**
   * Of two readings alike that cross at an angle the worst direction halves it or its supplement: s
   * / (√2 sin(angle / 2)), surveying textbooks, from memory.
   */
  @ParameterizedTest
  @ValueSource(doubles = {31, 60, 90, 120, 149})
  void two_readings_alike_are_as_sure_as_the_textbook_says(double angle) {
    SwingTies ties = to(Vec.ZERO, at(0, 5_000), at(angle, 5_000)).orElseThrow();
    double half = Math.toRadians(Math.min(angle, 180 - angle) / 2);
    assertThat(ties.error())
        .isCloseTo(RULES.error(5_000) / (Math.sqrt(2) * Math.sin(half)), within(1e-9));
  }

  @Test
  void tapes_that_cross_flatter_than_30_degrees_are_not_taken() {
    assertThat(to(Vec.ZERO, at(0, 5_000), at(30.01, 5_000))).isPresent();
    assertThat(to(Vec.ZERO, at(0, 5_000), at(29.99, 5_000))).isEmpty();
    assertThat(to(Vec.ZERO, at(0, 5_000), at(149.99, 5_000))).isPresent();
    assertThat(to(Vec.ZERO, at(0, 5_000), at(150.01, 5_000))).isEmpty();
  }

  @Test
  void of_all_pairs_the_surest_is_taken_whichever_corners_come_first() {
    Vec near = at(10, 2_000);
    Vec square = at(100, 2_500);
    SwingTies ties = to(Vec.ZERO, at(200, 9_000), near, at(70, 8_000), square).orElseThrow();
    assertThat(ties.first().at()).isEqualTo(near);
    assertThat(ties.second().at()).isEqualTo(square);
  }

  @Test
  void one_corner_or_a_corner_behind_a_wall_makes_no_two_tapes() {
    assertThat(to(Vec.ZERO, at(0, 5_000))).isEmpty();
    Region walled = FLOOR.minus(box(1_000, -3_000, 1_200, 3_000));
    List<KnownCorner> corners =
        List.of(new KnownCorner(1, 2, at(0, 5_000)), new KnownCorner(2, 2, at(90, 5_000)));
    assertThat(new SwingTieSearch(walled, corners, RULES).to(Vec.ZERO)).isEmpty();
    assertThat(new SwingTieSearch(FLOOR, corners, RULES).to(Vec.ZERO)).isPresent();
  }
}
