package slabwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class UnitPairTest {
  @Test
  void a_sentence_keeps_the_figure_of_the_jobs_own_system() {
    String both = "from 16 °C (60 °F), on 350 sq ft (32.5 m²), an opening of 1/8″ (3.2 mm)";
    assertThat(UnitPair.only(both, UnitSystem.FEET_INCHES))
        .isEqualTo("from 60 °F, on 350 sq ft, an opening of 1/8″");
    assertThat(UnitPair.only(both, UnitSystem.METRIC))
        .isEqualTo("from 16 °C, on 32.5 m², an opening of 3.2 mm");
  }

  @Test
  void brackets_that_hold_no_second_figure_stay() {
    String other = "5 gal (invented), 3 m (common practice)";
    assertThat(UnitPair.only(other, UnitSystem.METRIC)).isEqualTo(other);
  }

  @Test
  void inches_are_written_after_feet_even_when_there_are_none() {
    assertThat(LengthFormat.show(35 * 304.8 + 7 * 25.4 / 16, UnitSystem.FEET_INCHES))
        .isEqualTo("35′ 0 7/16″");
  }
}
