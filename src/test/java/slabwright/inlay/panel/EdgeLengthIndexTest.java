package slabwright.inlay.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class EdgeLengthIndexTest {
  @Test
  void a_slanted_segment_adds_its_length_evenly() {
    EdgeLengthIndex field = field(new double[] {0, 10}, 50);
    assertThat(field.between(2, 4)).isCloseTo(10, within(1e-9));
    assertThat(field.between(-5, 5)).isCloseTo(25, within(1e-9));
    assertThat(field.between(20, 30)).isZero();
  }

  @Test
  void an_upright_segment_counts_when_the_band_reaches_it() {
    EdgeLengthIndex field = field(new double[] {5, 5}, 7);
    assertThat(field.between(5, 6)).isEqualTo(7);
    assertThat(field.between(4, 5)).isEqualTo(7);
    assertThat(field.between(5.01, 6)).isZero();
  }

  @Property(tries = 200)
  void the_field_sums_what_each_segment_gives(
      @ForAll @Size(min = 2, max = 40) List<@IntRange(min = 0, max = 100) Integer> ends,
      @ForAll @IntRange(min = 0, max = 100) int a,
      @ForAll @IntRange(min = 0, max = 100) int wide) {
    int n = ends.size() / 2;
    double[] from = new double[n];
    double[] to = new double[n];
    double[] len = new double[n];
    double expected = 0;
    double b = a + wide + 0.5;
    for (int i = 0; i < n; i++) {
      from[i] = Math.min(ends.get(2 * i), ends.get(2 * i + 1));
      to[i] = Math.max(ends.get(2 * i), ends.get(2 * i + 1));
      len[i] = to[i] - from[i] + 1;
      double share = (Math.min(b, to[i]) - Math.max(a, from[i])) / (to[i] - from[i]);
      boolean in = a <= from[i] && from[i] <= b;
      expected += to[i] > from[i] ? Math.max(0, share) * len[i] : in ? len[i] : 0;
    }
    assertThat(new EdgeLengthIndex(from, to, len).between(a, b)).isCloseTo(expected, within(1e-6));
  }

  private static EdgeLengthIndex field(double[] ends, double length) {
    return new EdgeLengthIndex(
        new double[] {ends[0]}, new double[] {ends[1]}, new double[] {length});
  }
}
