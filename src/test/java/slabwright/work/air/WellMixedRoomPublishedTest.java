package slabwright.work.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The room equation against printed tables and worked examples. */
class WellMixedRoomPublishedTest {
  /**
   * Engineering Toolbox, pollution concentration in rooms: q = 1, V = 1, n an hour, t in minutes.
   */
  @ParameterizedTest(name = "{0} changes an hour")
  @CsvSource({
    "0.5, .1599, .3070, .5669, .9732, 1.4728, 1.8610, 1.9903, 2.0000, 2.0000",
    "1,   .1535, .2835, .4866, .7364, .9305, .9952, 1.0000, 1.0000, 1.0000",
    "2,   .1417, .2433, .3682, .4653, .4976, .5000, .5000, .5000, .5000",
    "4,   .1216, .1841, .2326, .2488, .2500, .2500, .2500, .2500, .2500",
    "8,   .0921, .1163, .1244, .1250, .1250, .1250, .1250, .1250, .1250",
    "16,  .0582, .0622, .0625, .0625, .0625, .0625, .0625, .0625, .0625",
    "32,  .0311, .0312, .0312, .0313, .0313, .0313, .0313, .0313, .0313",
    "64,  .0156, .0156, .0156, .0156, .0156, .0156, .0156, .0156, .0156",
  })
  void build_up_agrees_with_the_printed_table(
      double n,
      double a,
      double b,
      double c,
      double d,
      double e,
      double f,
      double g,
      double h,
      double i) {
    ConcentrationCurve curve =
        new WellMixedRoom(1, n / 60)
            .curve(List.of(new WellMixedRoom.VapourSource(0, 1e6, 1 / 60.0)));
    double[] printed = {a, b, c, d, e, f, g, h, i};
    for (int k = 0; k < printed.length; k++) {
      assertThat(curve.at(10 * Math.pow(2, k))).isCloseTo(printed[k], within(0.000055));
    }
  }

  /** C(t) = 0.117 (1 - e^(-2.4 t)) mg/m³: 500 m³, 1000 m³/h and decay of 0.4 an hour, 140 mg/h. */
  @Test
  void formaldehyde_settles_at_0_117_milligrams() {
    ConcentrationCurve curve =
        new WellMixedRoom(500, 2.4 * 500 / 60)
            .curve(List.of(new WellMixedRoom.VapourSource(0, 1e6, 140 / 60.0)));
    assertThat(curve.at(6000)).isCloseTo(0.11667, within(0.00001));
    assertThat(curve.at(30)).isCloseTo(0.11667 * (1 - Math.exp(-1.2)), within(0.00001));
  }

  /** ACGIH Industrial Ventilation, from memory: 1.2 cfm into 100 000 ft³ with 2000 cfm. */
  @Test
  void build_up_reaches_200_ppm_after_20_3_minutes_and_419_after_an_hour() {
    ConcentrationCurve curve =
        new WellMixedRoom(100_000, 2000)
            .curve(List.of(new WellMixedRoom.VapourSource(0, 1e6, 1.2)));
    assertThat(curve.at(20.273) * 1e6).isCloseTo(200, within(0.005));
    assertThat(curve.at(60) * 1e6).isCloseTo(419.28, within(0.01));
    assertThat(curve.at(1e5) * 1e6).isCloseTo(600, within(0.001));
  }

  /** The same book: from 100 down to 25 ppm takes 69.3 minutes. */
  @Test
  void purging_to_a_quarter_takes_69_3_minutes() {
    ClearingTime c = ClearingTime.of(100e-6, 25e-6, 100_000, 2000);
    assertThat(((ClearingTime.After) c).minutes()).isCloseTo(69.315, within(0.001));
    assertThat(ClearingTime.of(20e-6, 25e-6, 100_000, 0))
        .isEqualTo(new ClearingTime.AlreadyBelow());
  }
}
