package slabwright.work.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import slabwright.work.air.WellMixedRoom.VapourSource;

/** 100 m³ with 5 m³/min: 1 m³/min from minute 10 to 30, 2 m³/min from 40 to 50, by hand. */
class ConcentrationCurveTest {
  private static final double CHANGES = 0.05;
  private static final Offset<Double> EXACT = within(1e-12);

  private static final ConcentrationCurve CURVE =
      new WellMixedRoom(100, 5)
          .curve(List.of(new VapourSource(10, 30, 1), new VapourSource(40, 50, 2)));

  private static double rise(double rate, double minutes) {
    return rate / 5 * (1 - Math.exp(-CHANGES * minutes));
  }

  private static double fall(double minutes) {
    return Math.exp(-CHANGES * minutes);
  }

  private static final double FIRST = rise(1, 20);
  private static final double VALLEY = FIRST * fall(10);
  private static final double SECOND = VALLEY * fall(10) + rise(2, 10);

  /** Minutes × share from {@code from} to minute 30, 10 to 30 being what is laid first. */
  private static double first(double minutes) {
    return 1 / 5.0 * (minutes - (1 - Math.exp(-CHANGES * minutes)) / CHANGES);
  }

  @Test
  void it_rises_falls_and_rises_from_what_was_left() {
    assertThat(CURVE.at(-1)).isZero();
    assertThat(CURVE.at(5)).isZero();
    assertThat(CURVE.at(10)).isZero();
    assertThat(CURVE.at(20)).isCloseTo(rise(1, 10), EXACT);
    assertThat(CURVE.at(30)).isCloseTo(FIRST, EXACT);
    assertThat(CURVE.at(40)).isCloseTo(VALLEY, EXACT);
    assertThat(CURVE.at(50)).isCloseTo(SECOND, EXACT);
    assertThat(CURVE.at(70)).isCloseTo(SECOND * fall(20), EXACT);
  }

  @Test
  void its_peak_is_the_end_of_the_stronger_source_and_its_end_that_of_the_last() {
    assertThat(CURVE.peak().minute()).isEqualTo(50);
    assertThat(CURVE.peak().share()).isCloseTo(SECOND, EXACT);
    assertThat(CURVE.end()).isEqualTo(50);
  }

  @Test
  void the_peak_of_a_stretch_is_at_a_change_inside_of_it_or_at_one_of_its_ends() {
    assertThat(CURVE.peakBetween(12, 38)).isCloseTo(FIRST, EXACT);
    assertThat(CURVE.peakBetween(12, 25)).isCloseTo(rise(1, 15), EXACT);
    assertThat(CURVE.peakBetween(35, 41)).isCloseTo(FIRST * fall(5), EXACT);
    assertThat(CURVE.peakBetween(20, 60)).isCloseTo(SECOND, EXACT);
    assertThat(CURVE.peakBetween(55, 90)).isCloseTo(SECOND * fall(5), EXACT);
  }

  @Test
  void its_average_counts_clean_air_before_the_job_and_every_stretch_of_a_source() {
    assertThat(CURVE.average(10, 30)).isCloseTo(first(20) / 20, EXACT);
    assertThat(CURVE.average(-20, 30)).isCloseTo(first(20) / 50, EXACT);
    assertThat(CURVE.average(20, 30)).isCloseTo((first(20) - first(10)) / 10, EXACT);
    double falling = FIRST * (1 - fall(10)) / CHANGES;
    assertThat(CURVE.average(30, 40)).isCloseTo(falling / 10, EXACT);
    assertThat(CURVE.average(10, 40)).isCloseTo((first(20) + falling) / 30, EXACT);
  }

  /** The worst quarter of an hour begins and ends at the same height, about the peak. */
  @Test
  void the_worst_quarter_of_an_hour_lies_about_the_peak() {
    double worst = CURVE.worstAverage(15);
    double from = 0;
    for (double t = 30; t < 60; t += 0.001) {
      from = CURVE.average(t, t + 15) > CURVE.average(from, from + 15) ? t : from;
    }
    assertThat(worst).isCloseTo(CURVE.average(from, from + 15), within(1e-8));
    assertThat(CURVE.at(from)).isCloseTo(CURVE.at(from + 15), within(1e-4));
    assertThat(worst).isBetween(CURVE.at(from), SECOND);
  }

  @Test
  void what_is_drawn_has_even_moments_and_every_corner_before_the_end() {
    List<ConcentrationCurve.Sample> all = CURVE.samples(45, 9);
    assertThat(all.stream().map(ConcentrationCurve.Sample::minute))
        .containsExactly(
            0.0, 5.0, 10.0, 10.0, 15.0, 20.0, 25.0, 30.0, 30.0, 35.0, 40.0, 40.0, 45.0);
    assertThat(all).allSatisfy(s -> assertThat(s.share()).isCloseTo(CURVE.at(s.minute()), EXACT));
  }

  @Test
  void a_closed_room_keeps_what_was_laid() {
    ConcentrationCurve closed =
        new WellMixedRoom(100, 0).curve(List.of(new VapourSource(0, 10, 1)));
    assertThat(closed.at(5)).isCloseTo(0.05, EXACT);
    assertThat(closed.at(1000)).isCloseTo(0.1, EXACT);
    assertThat(closed.average(0, 10)).isCloseTo(0.05, EXACT);
    assertThat(closed.average(0, 20)).isCloseTo(0.075, EXACT);
  }

  /** x = 0.0001 of an air change: the series of (x - 1 + e^-x) / x² holds where it would cancel. */
  @Test
  void a_breath_of_fresh_air_lowers_the_average_by_a_third_of_the_change() {
    ConcentrationCurve nearly =
        new WellMixedRoom(100, 1e-3).curve(List.of(new VapourSource(0, 10, 1)));
    double x = 1e-4;
    assertThat(nearly.average(0, 10)).isCloseTo(0.1 * (0.5 - x / 6 + x * x / 24), within(1e-15));
  }

  @Test
  void two_curves_of_the_same_sources_are_equal_and_others_are_not() {
    ConcentrationCurve same =
        new WellMixedRoom(100, 5)
            .curve(List.of(new VapourSource(10, 30, 1), new VapourSource(40, 50, 2)));
    assertThat(same).isEqualTo(CURVE).hasSameHashCodeAs(CURVE);
    assertThat(new WellMixedRoom(100, 6).curve(List.of(new VapourSource(10, 30, 1))))
        .isNotEqualTo(CURVE);
  }
}
