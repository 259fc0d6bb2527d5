package slabwright;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slabwright.inlay.masking.MaskingParameters;
import slabwright.inlay.settingout.SettingOutParameters;
import slabwright.site.Overspray;
import slabwright.site.StencilSpec;
import slabwright.tape.TapeError;
import slabwright.tape.TapeRoom;
import slabwright.units.Length;
import slabwright.work.coat.LaneParameters;

/** Values of common practice, without a source: what docs/references.md says they are. */
class UsualValuesTest {
  private static final StencilSpec SPEC = StencilSpec.forRoll(Length.mm(1220));

  @Test
  void a_tape_errs_by_an_eighth_of_an_inch_and_two_hundredths_of_a_percent() {
    assertThat(TapeError.USUAL.fixed().mm()).isEqualTo(25.4 / 8);
    assertThat(TapeError.USUAL.share()).isEqualTo(0.0002);
  }

  @Test
  void a_turn_errs_by_half_a_degree_and_a_walk_closes_within_one_in_500() {
    assertThat(TapeRoom.USUAL_TURN_ERROR).isEqualTo(0.5);
    assertThat(TapeRoom.of(4).closingLimit()).isEmpty();
  }

  @Test
  void a_person_in_wet_work_passes_a_neck_of_450_mm() {
    assertThat(LaneParameters.NECK).isEqualTo(450);
  }

  @Test
  void a_blank_has_a_margin_and_a_press_band_of_50_mm_and_panels_overlap_by_12() {
    assertThat(SPEC.margin().mm()).isEqualTo(50);
    assertThat(SPEC.press().mm()).isEqualTo(50);
    assertThat(SPEC.overlap().mm()).isEqualTo(12);
  }

  @Test
  void a_cutter_loses_12_mm_at_each_edge_of_the_roll() {
    assertThat(SPEC.usableMm()).isEqualTo(1220 - 2 * 12);
  }

  @Test
  void masking_paper_is_12_to_36_inches_wide_and_laps_by_one() {
    MaskingParameters m = MaskingParameters.of(50, new Overspray.Stated(Length.mm(450)));
    assertThat(m.paperWidths()).containsExactly(304.8, 457.2, 609.6, 914.4);
    assertThat(m.paperLap()).isEqualTo(25.4);
  }

  @Test
  void setting_out_takes_a_tape_good_to_3_mm_and_ties_that_cross_at_30_degrees_or_more() {
    SettingOutParameters p = SettingOutParameters.usual();
    assertThat(p.error(10_000)).isEqualTo(3 + 2);
    assertThat(p.leastAngle()).isEqualTo(30);
  }
}
