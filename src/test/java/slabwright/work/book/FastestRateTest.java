package slabwright.work.book;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FastestRateTest {
  private static final Figure<Double> SILENT = Figure.missing(slabwright.work.Said.text("dye"));

  private static double share(double usual, double fastest) {
    return FastestRate.timeShare(Figure.known(usual), Figure.known(fastest));
  }

  @Test
  void where_the_book_is_silent_the_fastest_laying_takes_half_of_the_usual_time() {
    assertThat(FastestRate.timeShare(Figure.known(300.0), SILENT)).isEqualTo(0.5);
    assertThat(FastestRate.timeShare(SILENT, Figure.known(300.0))).isEqualTo(0.5);
    assertThat(share(0, 300)).isEqualTo(0.5);
  }

  @Test
  void where_it_says_how_fast_that_rules_and_no_fastest_rate_is_slower_than_the_usual_one() {
    assertThat(share(300, 400)).isEqualTo(0.75);
    assertThat(share(300, 900)).isEqualTo(1 / 3.0);
    assertThat(share(300, 200)).isEqualTo(1);
  }
}
