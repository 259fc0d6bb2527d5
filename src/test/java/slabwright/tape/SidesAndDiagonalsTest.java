package slabwright.tape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.tape.AdjustmentFixtures.adjusted;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Four sides and both diagonals, equal weights. No printed example was found; both were computed
 * independently, the first by hand as well.
 */
class SidesAndDiagonalsTest {
  /** On the ray t (20, 15): 2 (25t - 25)² + 2 (25t - 25.02)² is least at t = 1.0004. */
  private final AdjustedRoom rectangle =
      adjusted(
          "tape error 1 m",
          "wall 20 m left about",
          "wall 15 m left about",
          "wall 20 m left about",
          "wall 15 m left about",
          "diagonal A C 25.02 m",
          "diagonal B D 25.02 m");

  private final AdjustedRoom irregular =
      adjusted(
          "tape error 1 m",
          "wall 20.01 m left about",
          "wall 15.02 m left about",
          "wall 19.98 m left about",
          "wall 14.99 m left about",
          "diagonal A C 25.03 m",
          "diagonal B D 24.98 m");

  private static final Offset<Double> MICROMETRE = within(0.0011);

  @Test
  void the_rectangle_grows_by_4_in_10000() {
    assertThat(rectangle.corners().get(2).at().x()).isEqualTo(20_008, MICROMETRE);
    assertThat(rectangle.corners().get(2).at().y()).isEqualTo(15_006, MICROMETRE);
    assertThat(rectangle.area()).isEqualTo(300.24005e6, within(5.0));
  }

  @Test
  void the_rectangle_has_the_residuals_found_by_hand() {
    assertResiduals(rectangle, 8, 6, 8, 6, -10, -10);
    assertThat(rectangle.sigma()).isEqualTo(0.02, within(1e-6));
    assertThat(rectangle.redundancy()).isEqualTo(1);
  }

  @Test
  void the_irregular_room_has_the_corners_computed() {
    double[][] corners = {{0, 0}, {20_012.406, 0}, {20_017.379, 15_021.804}, {34.992, 14_991.768}};
    for (int i = 0; i < 4; i++) {
      assertThat(irregular.corners().get(i).at().x()).isEqualTo(corners[i][0], MICROMETRE);
      assertThat(irregular.corners().get(i).at().y()).isEqualTo(corners[i][1], MICROMETRE);
    }
    assertThat(irregular.area()).isEqualTo(300.09635e6, within(5.0));
  }

  @Test
  void the_irregular_room_has_the_residuals_computed() {
    assertResiduals(irregular, 2.406, 1.805, 2.410, 1.809, -3.013, -3.007);
    assertThat(irregular.sigma()).isEqualTo(0.006021, within(1e-6));
  }

  private static void assertResiduals(AdjustedRoom room, double... mm) {
    List<ReadingReport> readings = room.readings();
    for (int i = 0; i < mm.length; i++) {
      assertThat(readings.get(i).residual()).isEqualTo(mm[i], MICROMETRE);
    }
  }
}
