package slabwright.work.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.units.RateFormat;
import slabwright.work.Said;

/** What is said by 29 CFR 1926.1153 Table 1, with 1 cfm as 1.699 m³/h. */
class SilicaRuleTest {
  private static final double CFM = RateFormat.CUBIC_FOOT_M3;

  private static Optional<Duration> shift(int minutes) {
    return Optional.of(Duration.ofMinutes(minutes));
  }

  @Test
  void a_wheel_of_five_inches_needs_125_cfm_and_that_is_just_enough() {
    RuleNote note = SilicaRule.handGrinder("grinder", 127, Optional.of(125 * CFM));
    assertThat(note.verdict()).isEqualTo(RuleNote.Verdict.FINE);
    assertThat(Said.of(note.subject())).isEqualTo("Silica, grinder");
    assertThat(Said.of(note.number())).startsWith("125.0 cfm (212 m³/h)");
    assertThat(Said.of(note.finding()))
        .isEqualTo("5.0 in (127 mm) wheel; the vacuum pulls 125 cfm (212 m³/h)");
  }

  @Test
  void a_vacuum_of_which_nothing_is_known_is_said_to_be_unknown() {
    RuleNote note = SilicaRule.handGrinder("grinder", 178, Optional.empty());
    assertThat(Said.of(note.number())).startsWith("175.2 cfm (298 m³/h)");
    assertThat(Said.of(note.finding()))
        .isEqualTo("7.0 in (178 mm) wheel; the vacuum's airflow is not in the shop book");
  }

  @Test
  void past_four_hours_indoors_respirators_are_asked_for_with_the_hours_that_were_counted() {
    RuleNote over = SilicaRule.handHours(true, shift(270));
    assertThat(over.verdict()).isEqualTo(RuleNote.Verdict.LOOK);
    assertThat(Said.of(over.finding())).startsWith("indoors, 4.5 h of all grinding a shift");
    assertThat(Said.of(over.todo())).isEqualTo("Respirators with APF 10 for everyone at it.");
    RuleNote four = SilicaRule.handHours(true, shift(240));
    assertThat(four.verdict()).isEqualTo(RuleNote.Verdict.FINE);
    assertThat(four.todo()).isEqualTo(RuleNote.NOTHING);
  }

  @Test
  void outdoors_table_1_asks_for_none_however_long() {
    RuleNote note = SilicaRule.handHours(false, shift(540));
    assertThat(note.verdict()).isEqualTo(RuleNote.Verdict.FINE);
    assertThat(Said.of(note.finding())).startsWith("outdoors, 9.0 h of all grinding a shift");
  }

  @Test
  void hours_that_nobody_counted_are_asked_for() {
    RuleNote note = SilicaRule.handHours(true, Optional.empty());
    assertThat(note.verdict()).isEqualTo(RuleNote.Verdict.UNKNOWN);
    assertThat(Said.of(note.finding())).isEqualTo("hours a shift are not known");
    assertThat(Said.of(note.todo())).isEqualTo("Count them.");
  }

  @Test
  void a_floor_grinder_goes_by_its_maker_s_airflow_and_indoors_dust_is_vacuumed_between_passes() {
    RuleNote indoors = SilicaRule.floorGrinder(true, Optional.of(420 * CFM));
    assertThat(indoors.verdict()).isEqualTo(RuleNote.Verdict.LOOK);
    assertThat(Said.of(indoors.finding())).isEqualTo("the maker asks for 420 cfm (714 m³/h)");
    assertThat(Said.of(indoors.todo())).contains("HEPA vacuum between passes");
    RuleNote outdoors = SilicaRule.floorGrinder(false, Optional.empty());
    assertThat(outdoors.verdict()).isEqualTo(RuleNote.Verdict.UNKNOWN);
    assertThat(Said.of(outdoors.finding()))
        .isEqualTo("the maker's airflow is not in the shop book");
    assertThat(Said.of(outdoors.todo())).doesNotContain("HEPA").startsWith("Collector");
  }
}
