package slabwright.work.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.units.RateFormat;
import slabwright.work.Said;

class RulesPublishedTest {
  /** 29 CFR 1926.1153 Table 1 (xii); 4 in gives 100 cfm in a trade video, the others computed. */
  @ParameterizedTest
  @CsvSource({"4, 100", "4.5, 112.5", "5, 125", "7, 175", "9, 225"})
  void a_shroud_needs_25_cfm_an_inch(double inches, double cfm) {
    assertThat(SilicaRule.shroudAirflow(inches * 25.4) / RateFormat.CUBIC_FOOT_M3)
        .isCloseTo(cfm, within(1e-9));
  }

  /** Table 1 (xii): none up to four hours a shift, APF 10 past them, indoors only. */
  @Test
  void respirators_are_asked_for_indoors_past_four_hours() {
    assertThat(SilicaRule.respirator(true, Duration.ofHours(4))).isEmpty();
    assertThat(SilicaRule.respirator(true, Duration.ofMinutes(241))).contains(10);
    assertThat(SilicaRule.respirator(false, Duration.ofHours(8))).isEmpty();
  }

  @Test
  void rows_are_the_twelfth_for_hand_and_the_thirteenth_for_floor_grinders() {
    double cfm = RateFormat.CUBIC_FOOT_M3;
    assertThat(Said.of(SilicaRule.handGrinder("g", 127, Optional.of(150 * cfm)).rule()))
        .endsWith("(xii)");
    assertThat(Said.of(SilicaRule.floorGrinder(true, Optional.of(420 * cfm)).rule()))
        .endsWith("(xiii)");
    assertThat(Said.of(SilicaRule.floorGrinder(true, Optional.empty()).todo())).contains("HEPA");
    assertThat(SilicaRule.PEL).isEqualTo(50);
    assertThat(SilicaRule.ACTION_LEVEL).isEqualTo(25);
  }

  @Test
  void a_vacuum_under_the_number_is_not_met_and_an_unknown_one_unknown() {
    double cfm = RateFormat.CUBIC_FOOT_M3;
    assertThat(SilicaRule.handGrinder("g", 127, Optional.of(124 * cfm)).verdict())
        .isEqualTo(RuleNote.Verdict.NOT_MET);
    assertThat(SilicaRule.handGrinder("g", 127, Optional.of(125.01 * cfm)).verdict())
        .isEqualTo(RuleNote.Verdict.FINE);
    assertThat(SilicaRule.handGrinder("g", 127, Optional.empty()).verdict())
        .isEqualTo(RuleNote.Verdict.UNKNOWN);
  }

  /** ANSI A326.3-2021, as quoted by the specifiers' forum; entry foyers are Interior, Wet. */
  @Test
  void slip_classes_and_their_borders() {
    assertThat(SlipClass.INTERIOR_WET.passes(0.42)).isTrue();
    assertThat(SlipClass.INTERIOR_WET.passes(0.419)).isFalse();
    assertThat(SlipClass.EXTERIOR_WET.passes(0.54)).isFalse();
    assertThat(SlipClass.EXTERIOR_WET.passes(0.55)).isTrue();
    assertThat(SlipClass.INTERIOR_WET_PLUS.minimum()).isEqualTo(0.50);
    assertThat(SlipClass.OILS_GREASES.minimum()).isEqualTo(0.55);
    assertThat(SlipClass.INTERIOR_DRY.measuredWet()).isFalse();
    assertThat(SlipClass.of(false, true, false, false)).isEqualTo(SlipClass.INTERIOR_WET);
    assertThat(SlipClass.of(true, true, false, false)).isEqualTo(SlipClass.EXTERIOR_WET);
    assertThat(SlipClass.of(false, false, false, false)).isEqualTo(SlipClass.INTERIOR_DRY);
  }

  /** ASTM F1869 arithmetic, computed: 2.4 g on 0.50 ft² in 66 h, 3.0 g on 0.466 ft² in 72 h. */
  @Test
  void moisture_emission_examples() {
    assertThat(MoistureFormulas.emission(2.4, 0.50, 66)).isCloseTo(3.848, within(0.0005));
    assertThat(MoistureFormulas.emission(3.0, 0.466, 72)).isCloseTo(4.731, within(0.0005));
  }

  /** ASTM F2170: 40 % of a slab drying from the top, 20 % from both sides. */
  @Test
  void probe_depths() {
    assertThat(MoistureFormulas.probeDepth(6 * 25.4, false)).isCloseTo(2.4 * 25.4, within(1e-9));
    assertThat(MoistureFormulas.probeDepth(6 * 25.4, true)).isCloseTo(1.2 * 25.4, within(1e-9));
    assertThat(MoistureFormulas.probeDepth(4 * 25.4, false)).isCloseTo(1.6 * 25.4, within(1e-9));
    assertThat(MoistureFormulas.probeDepth(4 * 25.4, true)).isCloseTo(0.8 * 25.4, within(1e-9));
    assertThat(MoistureFormulas.probeDepth(150, false)).isCloseTo(60, within(1e-9));
    assertThat(MoistureFormulas.probeDepth(150, true)).isCloseTo(30, within(1e-9));
  }

  /** ASTM F2170: three probes in the first 1000 ft² and one in each further 1000 ft². */
  @ParameterizedTest
  @CsvSource({"400, 3", "1000, 3", "1001, 4", "2000, 4", "2500, 5"})
  void probe_counts(double squareFeet, int probes) {
    assertThat(MoistureFormulas.probes(squareFeet)).isEqualTo(probes);
  }

  /** ADA Standards 303: 1/4 in upright, to 1/2 in bevelled. */
  @Test
  void changes_in_level() {
    assertThat(LevelChangeRule.note("sill", 6.35).verdict()).isEqualTo(RuleNote.Verdict.FINE);
    assertThat(LevelChangeRule.note("sill", -6.4).verdict()).isEqualTo(RuleNote.Verdict.LOOK);
    assertThat(LevelChangeRule.note("sill", 12.7).verdict()).isEqualTo(RuleNote.Verdict.LOOK);
    assertThat(LevelChangeRule.note("sill", 12.8).verdict()).isEqualTo(RuleNote.Verdict.NOT_MET);
  }
}
