package slabwright.inlay.artwork.css;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Corners counted by hand, as SVG 2 (11.6, markers) has one at each end of a segment. */
class MarkerVerticesTest {
  private static long of(String name, String attribute, String value) {
    SvgElement e = new SvgElement(name);
    e.attributes.put(attribute, value);
    return MarkerVertices.of(e);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M0 0L10 0 10 10 | 3",
        "m0,0h10v-5.5H0z | 5",
        "M0 0 C1 1 2 2 3 3 4 4 5 5 6 6 | 3",
        "M0 0 Q1 1 2 2 T4 4 S5 5 6 6 | 4",
        "M0 0 A5 5 0 0 1 10 10 a.5.5 0 0 0 1e1-2E-1 | 3",
        "M0 0 zM5 5Z | 4",
        "M.5.5-1-1 | 2",
        "'' | 0"
      })
  void a_path_has_one_where_it_starts_and_at_the_end_of_each_piece(String d, long corners) {
    assertThat(of("path", "d", d)).isEqualTo(corners);
  }

  /** One too many is counted, so that a count is never too small. */
  @Test
  void lines_through_points_have_one_at_each() {
    assertThat(of("polyline", "points", "0,0 10,0 10,10")).isEqualTo(4);
    assertThat(of("polygon", "points", "0 0 10 0 10 10 0 10")).isEqualTo(5);
    assertThat(of("line", "x2", "10")).isEqualTo(2);
  }

  @Test
  void what_carries_no_markers_has_none() {
    assertThat(of("circle", "r", "10")).isZero();
    assertThat(of("rect", "width", "10")).isZero();
  }
}
