package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArcsTest {
  /** Inscribed n-gon: area/R² and sag %, from (n/2) sin(2 pi/n) and 1 - cos(pi/n). */
  @ParameterizedTest
  @CsvSource({
    "8, 2.828427, 7.612",
    "16, 3.061467, 1.921",
    "32, 3.121445, 0.4815",
    "64, 3.136548, 0.1205",
    "128, 3.140331, 0.0301"
  })
  void a_circle_has_the_fewest_corners_for_its_tolerance(int n, double area, double sagPercent) {
    double radius = 1000;
    double tolerance = radius * sagPercent / 100 * 1.001;
    Ring circle = Arcs.circle(Vec.ZERO, radius, tolerance);
    assertThat(circle.points()).hasSize(n);
    assertThat(circle.signedArea() / (radius * radius)).isCloseTo(area, within(1e-6));
  }

  /** Worked example of a public table of circular sections. */
  @Test
  void the_segment_over_a_chord_of_21_with_rise_6() {
    assertThat(Arcs.radius(21, 6)).isCloseTo(12.1875, within(1e-9));
    assertThat(Arcs.length(21, 6)).isCloseTo(25.308373, within(1e-6));
    assertThat(Arcs.segmentArea(21, 6)).isCloseTo(89.254148, within(1e-6));
  }

  @Test
  void a_flattened_arc_encloses_its_segment() {
    List<Vec> points = Arcs.arc(Vec.ZERO, new Vec(21, 0), 6, 1e-4);
    points.add(new Vec(21, 0));
    assertThat(Math.abs(new Ring(points).signedArea())).isCloseTo(89.254148, within(2e-3));
    assertThat(points).allMatch(p -> p.y() <= 0);
  }

  /** Radii of the published annulus 107/49. */
  @Test
  void an_annulus_is_the_larger_disc_less_the_smaller() {
    Region outer = Region.of(Arcs.circle(Vec.ZERO, 107, 1e-4));
    Region inner = Region.of(Arcs.circle(Vec.ZERO, 49, 1e-4));
    assertThat(outer.minus(inner).area()).isCloseTo(28_425.130, within(0.1));
  }
}
