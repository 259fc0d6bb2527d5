package slabwright.floor.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Of an invented floor of 10 m²: a gap shuts at 508 mm and takes 3 m², another at 900 mm 4 m². */
class ReachCurveTest {
  private static final ReachCurve CURVE =
      new ReachCurve(
          false,
          10e6,
          List.of(
              point(300, 9.5e6),
              point(500, 9.0e6),
              point(508, 6.0e6),
              point(700, 5.9e6),
              point(892, 5.7e6),
              point(900, 1.7e6),
              point(1_300, 1.0e6)));

  private static ReachPoint point(double body, double machine) {
    return new ReachPoint(body, machine, 10e6 - machine);
  }

  @ParameterizedTest
  @CsvSource({
    "200,0.95",
    "300,0.95",
    "400,0.925",
    "504,0.75",
    "604,0.595",
    "1200,0.1175",
    "2000,0.1"
  })
  void between_its_widths_a_share_lies_on_a_straight_line_and_is_held_beyond(
      double body, double share) {
    assertThat(CURVE.share(body)).isCloseTo(share, within(1e-12));
  }

  @Test
  void steps_down_are_told_the_largest_first_and_only_where_the_width_is_known_to_10_mm() {
    List<ReachCurve.Drop> drops = CURVE.drops();
    assertThat(drops).extracting(ReachCurve.Drop::lost).containsExactly(4e6, 3e6);
    assertThat(drops).extracting(d -> d.from().body()).containsExactly(892.0, 500.0);
    assertThat(drops).extracting(d -> d.to().body()).containsExactly(900.0, 508.0);
  }

  @Test
  void a_loss_of_one_and_a_half_hundredths_of_the_floor_is_no_step() {
    ReachCurve little = new ReachCurve(false, 10e6, List.of(point(300, 9.0e6), point(310, 8.85e6)));
    assertThat(little.drops()).isEmpty();
    assertThat(new ReachCurve(false, 10e6, List.of(point(300, 9.0e6), point(310, 8.84e6))).drops())
        .hasSize(1);
  }

  @Test
  void of_no_floor_nothing_is_ground() {
    assertThat(new ReachCurve(true, 0, List.of(point(300, 0))).share(300.0)).isZero();
  }
}
