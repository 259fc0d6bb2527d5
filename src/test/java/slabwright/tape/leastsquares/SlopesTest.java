package slabwright.tape.leastsquares;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** The slopes of every kind of row against central differences. */
class SlopesTest {
  private static final double STEP = 1e-3;

  @Property(tries = 200)
  void slopes_are_those_of_the_value(
      @ForAll @LongRange(min = 0, max = 1000) long seed, @ForAll @IntRange(max = 4) int kind) {
    double[] xy = new RandomRoom(seed).truth();
    Observation row = row(kind, xy.length / 2);
    DesignRow slopes = new DesignRow();
    row.slopes(xy, slopes);
    double[] full = new double[xy.length];
    for (int k = 0; k < slopes.size(); k++) {
      full[slopes.coordinate(k)] += slopes.slope(k);
    }
    for (int c = 0; c < xy.length; c++) {
      assertThat(full[c]).isEqualTo(difference(row, xy, c), within(1e-6));
    }
  }

  private static double difference(Observation row, double[] xy, int c) {
    double[] less = xy.clone();
    double[] more = xy.clone();
    less[c] -= STEP;
    more[c] += STEP;
    return (row.misfit(less) - row.misfit(more)) / (2 * STEP);
  }

  private static Observation row(int kind, int n) {
    return switch (kind) {
      case 0 -> new DistanceObservation(0, 2, 1000, 1);
      case 1 -> new TurnObservation(n - 1, 0, 1, 1, 1);
      case 2 -> new OffsetObservation(2, 2, 0, 1, 1000, 1);
      case 3 -> new OffsetObservation(0, 1, n - 2, n - 1, 1000, 1);
      default -> new WallSpotObservation(2, 0, 1, 700, 1000, 1);
    };
  }
}
