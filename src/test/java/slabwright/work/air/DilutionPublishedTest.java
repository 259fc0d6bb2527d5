package slabwright.work.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;
import slabwright.work.Said;
import slabwright.work.step.AirEffect;
import slabwright.work.step.CoatNumber;
import slabwright.work.step.StepType;

/** Worked examples of dilution ventilation, each named with its source. */
class DilutionPublishedTest {
  private static final StepType COAT =
      StepType.coat("hall", new CoatNumber(1, 1), new AirEffect.Vapour("dye", 1));

  private static final double SEVENTY_F = (70 - 32) * 5 / 9.0;
  private static final double GALLON = QuantityFormat.US_GALLON_MM3;
  private static final double FOOT3 = RateFormat.CUBIC_FOOT_M3;

  /** Abulencia and Theodore, Fluid Flow for the Practicing Chemical Engineer, example 20.2. */
  @Test
  void toluene_adhesive_needs_4745_cfm() {
    Solvent toluene = solvent("toluene", 0.87, 92, 0.012, 80);
    VapourStep step = step(toluene, 3 / 8.0 * 0.4 * GALLON, 60);
    FreshAirNeed need = FreshAirNeed.of(List.of(step), room(10_000), 5, 20);
    assertThat(cfm(need.health())).isCloseTo(4745, Percentage.withPercentage(0.5));
  }

  /** ACGIH Industrial Ventilation, from memory: 1.5 pt/h of methyl chloroform, TLV 350 ppm. */
  @Test
  void methyl_chloroform_needs_285_cfm_and_1424_with_a_mixing_factor_of_5() {
    Solvent s = solvent("methyl chloroform", 1.32, 133.4, 0.08, 350);
    List<VapourStep> steps = List.of(step(s, 1.5 / 8 * GALLON, 60));
    assertThat(cfm(FreshAirNeed.of(steps, room(10_000), 1, SEVENTY_F).health()))
        .isCloseTo(284.8, within(0.1));
    assertThat(cfm(FreshAirNeed.of(steps, room(10_000), 5, SEVENTY_F).health()))
        .isCloseTo(1424, within(1.0));
  }

  /**
   * ACGIH Industrial Ventilation, from memory: xylol enamel in an oven, safety factor 10 and B 0.7
   * above 250 °F give 159 cfm, so a quarter of the limit at room heat needs 159.32 · 4/10 · 0.7.
   */
  @Test
  void xylol_needs_the_oven_examples_air_for_a_quarter_of_the_limit() {
    Solvent s = solvent("xylol", 0.88, 106, 0.01, 100);
    List<VapourStep> steps = List.of(step(s, 2 / 8.0 * GALLON, 60));
    double cfm = cfm(FreshAirNeed.of(steps, room(10_000), 1, SEVENTY_F).fire());
    assertThat(cfm * 10 / 4 / 0.7).isCloseTo(159.32, within(0.01));
  }

  /** Computed from the 403 formula for acetone, SG 0.79, MW 58.08. */
  @Test
  void one_gallon_of_acetone_an_hour_needs_117_cfm_for_fire_and_2923_for_health() {
    List<VapourStep> steps = List.of(step(Solvent.ACETONE, GALLON, 60));
    FreshAirNeed need = FreshAirNeed.of(steps, room(10_000), 1, SEVENTY_F);
    assertThat(cfm(need.fire())).isCloseTo(116.94, within(0.01));
    assertThat(cfm(need.health())).isCloseTo(2923.5, within(0.1));
    assertThat(cfm(FreshAirNeed.of(steps, room(10_000), 3, SEVENTY_F).health()))
        .isCloseTo(8770.5, within(0.2));
  }

  /** 29 CFR 1910.106(e)(3)(v)(a): 1200 ft² of floor, 1200 cfm. */
  @Test
  void a_floor_of_1200_square_feet_needs_1200_cfm() {
    AirVolume space = AirVolume.of(1200 * QuantityFormat.SQUARE_FOOT_MM2, 3000);
    assertThat(cfm(FreshAirNeed.of(List.of(), space, 1, 20).byFloor()))
        .isCloseTo(1200, within(1e-6));
  }

  @Test
  void a_gallon_of_acetone_gives_43_85_cubic_feet_of_vapour() {
    assertThat(Solvent.ACETONE.vapour(GALLON, SEVENTY_F) / FOOT3).isCloseTo(43.85, within(0.01));
  }

  /**
   * 359.05 ft³ a pound-mole at 32 °F, so 387 at 70 °F: the other form of the constant. The printed
   * 403 is rounded and lies 0.2 % under it.
   */
  @Test
  void a_pound_mole_takes_387_cubic_feet_at_70_F_and_359_at_freezing() {
    double poundMole = 58.08 * RateFormat.POUND_KG / 0.79 * 1e6;
    assertThat(Solvent.ACETONE.vapour(poundMole, SEVENTY_F) / FOOT3).isCloseTo(387, within(0.8));
    assertThat(Solvent.ACETONE.vapour(poundMole, 0) / FOOT3).isCloseTo(359.05, within(0.8));
  }

  @Test
  void one_gallon_in_a_closed_10_000_cubic_foot_room_is_17_54_percent_of_the_limit() {
    AirScreening a =
        AirScreening.of(
            List.of(step(Solvent.ACETONE, GALLON, 30)),
            room(10_000),
            Optional.empty(),
            1,
            SEVENTY_F);
    assertThat(a.closed().peakLel()).isCloseTo(0.1754, within(0.00005));
    assertThat(a.stated()).isEmpty();
  }

  @Test
  void two_gallons_in_an_hour_with_2000_cfm_reach_729_ppm() {
    AirFigures air = twoGallons();
    LimitComparison peak = air.limits().get(air.limits().size() - 1);
    assertThat(peak.limit().span()).isEqualTo(ExposureLimit.AveragingPeriod.DANGER);
    assertThat(peak.reachedPpm()).isCloseTo(729.07, within(0.01));
    assertThat(air.lel().at(90) * 25_000).isCloseTo(36.30, within(0.01));
    assertThat(((ClearingTime.After) air.toHealth()).minutes()).isCloseTo(10.70, within(0.01));
  }

  @Test
  void with_no_air_the_same_two_gallons_stand_at_4385_ppm_for_ever() {
    AirFigures closed =
        AirFigures.of(
            List.of(step(Solvent.ACETONE, 2 * GALLON, 60)), room(20_000), 0, 1, SEVENTY_F);
    assertThat(closed.lel().at(60) * 25_000).isCloseTo(4385, within(1.0));
    assertThat(closed.lel().at(10_000)).isEqualTo(closed.lel().at(60));
    assertThat(closed.toHealth()).isEqualTo(new ClearingTime.Never());
  }

  /** NTP and OSHA pages: mg/m³ = ppm · 58.08 / 24.45. */
  @Test
  void acetone_limits_in_milligrams_agree_with_the_printed_ones() {
    assertThat(Solvent.ACETONE.milligramsPerCubicMetre(250e-6)).isCloseTo(593.9, within(0.1));
    assertThat(Solvent.ACETONE.milligramsPerCubicMetre(500e-6)).isCloseTo(1187, within(1.0));
    assertThat(
            Solvent.ACETONE
                .strictest(ExposureLimit.AveragingPeriod.EIGHT_HOURS)
                .orElseThrow()
                .share())
        .isEqualTo(250e-6);
  }

  private static AirFigures twoGallons() {
    return AirFigures.of(
        List.of(step(Solvent.ACETONE, 2 * GALLON, 60)), room(20_000), 2000 * FOOT3, 1, SEVENTY_F);
  }

  private static AirVolume room(double cubicFeet) {
    return new AirVolume(cubicFeet * FOOT3 / 3, 3);
  }

  private static VapourStep step(Solvent s, double mm3, double minutes) {
    return new VapourStep(
        COAT, Said.text("step"), 0, minutes, List.of(new VapourStep.Liquid(s, mm3)));
  }

  private static Solvent solvent(String name, double sg, double mw, double lel, double ppm) {
    return Solvent.fromDataSheet(name, sg, mw, lel, 20, ppm, Optional.empty());
  }

  private static double cfm(double cubicMetresPerMinute) {
    return cubicMetresPerMinute / FOOT3;
  }
}
