package slabwright.tape.leastsquares;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import slabwright.tape.ErrorEllipse;

/** What is said of precision, against many rooms whose true corners are known. */
class PrecisionTest {
  private static final int ROOMS = 150;

  private static List<Trial> trials;

  private record Trial(RandomRoom room, LeastSquaresFit fit, Reliability quality) {
    static Trial of(int seed) {
      RandomRoom room = new RandomRoom(10_000 + seed);
      Datum datum = Datum.firstWall(room.size());
      LeastSquaresFit fit =
          new LeastSquaresFitter(datum, room.readings(), () -> false).from(room.truth());
      return new Trial(room, fit, Reliability.at(fit.xy(), datum, room.readings()).orElseThrow());
    }

    int redundancy() {
      return room.readings().size() - (2 * room.size() - 3);
    }

    /** How far a corner lies from its true place, 1 being the rim of its ellipse. */
    double ellipses(int corner) {
      double xx = quality.cofactor(2 * corner, 2 * corner);
      double yy = quality.cofactor(2 * corner + 1, 2 * corner + 1);
      double xy = quality.cofactor(2 * corner, 2 * corner + 1);
      ErrorEllipse e = ErrorEllipse.of(xx, yy, xy);
      double dx = fit.xy()[2 * corner] - room.truth()[2 * corner];
      double dy = fit.xy()[2 * corner + 1] - room.truth()[2 * corner + 1];
      double turn = Math.toRadians(e.bearing());
      double along = dx * Math.cos(turn) + dy * Math.sin(turn);
      double across = dy * Math.cos(turn) - dx * Math.sin(turn);
      return Math.hypot(along / e.major(), across / e.minor());
    }
  }

  @BeforeAll
  static void adjustTheRooms() {
    trials = IntStream.range(0, ROOMS).mapToObj(Trial::of).toList();
  }

  /** The sum of squares over all rooms has mean r and deviation √(2 r). */
  @Test
  void residuals_are_as_large_as_the_stated_errors_make_them() {
    double sum = trials.stream().mapToDouble(t -> t.fit().sumOfSquares()).sum();
    double r = trials.stream().mapToInt(Trial::redundancy).sum();
    assertThat(sum).isEqualTo(r, within(4 * Math.sqrt(2 * r)));
  }

  /** The third corner is free in both coordinates: 39.3 % within one ellipse, 95 % in 2.447. */
  @Test
  void corners_lie_within_their_ellipses_as_often_as_they_should() {
    double[] distances = trials.stream().mapToDouble(t -> t.ellipses(2)).toArray();
    assertThat(share(distances, 1)).isEqualTo(0.393, within(0.16));
    assertThat(share(distances, 2.447)).isEqualTo(0.95, within(0.07));
  }

  private static double share(double[] distances, double within) {
    return IntStream.range(0, distances.length).filter(k -> distances[k] <= within).count()
        / (double) distances.length;
  }

  @Test
  void redundancy_numbers_add_up_to_the_redundancy() {
    for (Trial t : trials) {
      double sum =
          IntStream.range(0, t.room().readings().size()).mapToDouble(t.quality()::redundancy).sum();
      assertThat(sum).isEqualTo(t.redundancy(), within(1e-4));
    }
  }

  /**
   * Ghilani, Adjustment Computations: a round ellipse has its axes alike, a flat one its bearing.
   */
  @Test
  void an_ellipse_has_the_axes_of_its_variances() {
    assertThat(ErrorEllipse.of(9, 4, 0)).isEqualTo(new ErrorEllipse(3, 2, 0));
    assertThat(ErrorEllipse.of(4, 9, 0)).isEqualTo(new ErrorEllipse(3, 2, 90));
    ErrorEllipse leaning = ErrorEllipse.of(5, 5, 4);
    assertThat(leaning.major()).isEqualTo(3, within(1e-12));
    assertThat(leaning.minor()).isEqualTo(1, within(1e-12));
    assertThat(leaning.bearing()).isEqualTo(45, within(1e-12));
    assertThat(ErrorEllipse.of(5, 5, -4).bearing()).isEqualTo(135, within(1e-12));
  }
}
