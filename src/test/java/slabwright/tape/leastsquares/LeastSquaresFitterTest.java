package slabwright.tape.leastsquares;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** The least-squares core on an example with three known points. */
class LeastSquaresFitterTest {
  /**
   * C. Ghilani and P. Wolf, Adjustment Computations, chapter 14, a station fixed by distances to
   * three known ones, in feet; the result was computed independently.
   */
  private final double[] start = {865.40, 4527.15, 2432.55, 2047.25, 2865.22, 27.15, 6500, 3500};

  private final Datum datum = Datum.holding(true, true, true, true, true, true, false, false);
  private final List<Observation> distances =
      List.of(
          new DistanceObservation(0, 3, 6049.00, 1),
          new DistanceObservation(1, 3, 4736.83, 1),
          new DistanceObservation(2, 3, 5446.49, 1));

  private LeastSquaresFit fit() {
    return new LeastSquaresFitter(datum, distances, () -> false).from(start);
  }

  @Test
  void a_station_is_found_from_three_distances() {
    double[] xy = fit().xy();
    assertThat(xy[6]).isEqualTo(6861.317, within(0.0006));
    assertThat(xy[7]).isEqualTo(3727.819, within(0.0006));
  }

  @Test
  void its_residuals_are_those_of_the_example() {
    Reliability quality = Reliability.at(fit().xy(), datum, distances).orElseThrow();
    double[] residuals = {-0.0374, 0.0768, -0.0474};
    for (int i = 0; i < 3; i++) {
      assertThat(quality.residual(i)).isEqualTo(residuals[i], within(0.00006));
    }
  }

  @Test
  void its_standard_deviations_are_those_of_the_example() {
    LeastSquaresFit fit = fit();
    double sigma = Math.sqrt(fit.sumOfSquares());
    Reliability quality = Reliability.at(fit.xy(), datum, distances).orElseThrow();
    assertThat(sigma).isEqualTo(0.0977, within(0.00006));
    assertThat(sigma * Math.sqrt(quality.cofactor(6, 6))).isEqualTo(0.078, within(0.0006));
    assertThat(sigma * Math.sqrt(quality.cofactor(7, 7))).isEqualTo(0.154, within(0.0006));
  }

  @Test
  void the_redundancy_numbers_add_up_to_the_redundancy() {
    Reliability quality = Reliability.at(fit().xy(), datum, distances).orElseThrow();
    double sum = quality.redundancy(0) + quality.redundancy(1) + quality.redundancy(2);
    assertThat(sum).isEqualTo(1, within(1e-9));
  }

  @Test
  void one_distance_leaves_the_station_free() {
    assertThat(Reliability.at(start, datum, distances.subList(0, 1))).isEmpty();
  }

  @Test
  void a_cancelled_fit_says_so() {
    LeastSquaresFitter fitter = new LeastSquaresFitter(datum, distances, () -> true);
    assertThatThrownBy(() -> fitter.from(start)).isInstanceOf(CancellationException.class);
  }
}
