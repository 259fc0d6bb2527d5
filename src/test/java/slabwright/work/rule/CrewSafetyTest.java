package slabwright.work.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.work.Said;
import slabwright.work.WorkPlan;
import slabwright.work.WorkSamples;

class CrewSafetyTest {
  private static final Site SITE = WorkSamples.tramHall();

  private static String subjects(List<RuleNote> notes) {
    return String.join("\n", notes.stream().map(n -> Said.of(n.subject())).toList());
  }

  private static List<RuleNote> notes(WorkPlan plan, String area) {
    return plan.area(area).orElseThrow().notes();
  }

  @Test
  void where_concrete_is_ground_indoors_every_protection_is_named() {
    assertThat(subjects(notes(WorkSamples.plan(SITE), "reading-hall")))
        .contains("Silica, written plan")
        .contains("Dust and slurry")
        .contains("Noise")
        .contains("Electricity")
        .contains("Carbon monoxide")
        .contains("Breathing protection, dust");
  }

  @Test
  void where_nothing_is_ground_there_is_no_word_of_dust_noise_or_engines() {
    FloorArea terrace = SITE.area("terrace").orElseThrow();
    FloorArea coated = terrace.withFinish(new Finish(Optional.empty(), List.of()));
    WorkPlan plan = WorkSamples.plan(SITE.withAreas(List.of(SITE.areas().get(0), coated)));
    assertThat(subjects(notes(plan, "terrace")))
        .doesNotContain("Silica")
        .doesNotContain("Noise")
        .doesNotContain("Carbon monoxide")
        .doesNotContain("Breathing");
  }

  @Test
  void vapour_without_named_protection_asks_for_supplied_air_and_a_competent_person() {
    RuleNote note = BreathingRule.vapour(List.of(), "acetone");
    assertThat(note.verdict()).isEqualTo(RuleNote.Verdict.UNKNOWN);
    assertThat(Said.of(note.todo())).contains("supplied air: ask a competent person");
    assertThat(Said.of(note.rule())).contains("state limits may be lower");
  }

  @Test
  void named_protection_stands_with_its_class_and_a_change_schedule() {
    RuleNote note = BreathingRule.vapour(List.of("half mask, organic vapour"), "acetone");
    assertThat(Said.of(note.finding())).contains("half mask, organic vapour");
    assertThat(Said.of(note.number())).contains("APF 10");
    assertThat(Said.of(note.todo())).contains("change schedule");
  }

  @Test
  void past_four_hours_of_hand_grinding_indoors_the_class_is_named_for_everyone() {
    RuleNote note = BreathingRule.dust(Optional.of(SilicaRule.APF), true);
    assertThat(Said.of(note.todo())).contains("P100").contains("for everybody");
    assertThat(Said.of(note.finding())).contains("APF 10");
  }

  /** Beside a line that asks to count the hours it said that Table 1 asks for none. */
  @Test
  void where_the_hours_are_not_known_nothing_says_that_no_respirator_is_asked_for() {
    RuleNote note = BreathingRule.dust(Optional.empty(), false);
    assertThat(Said.of(note.finding())).contains("not known").doesNotContain("none");
    assertThat(Said.of(note.todo())).contains("P100");
    WorkPlan undated = WorkSamples.plan(SITE, WorkSamples.bookWith("crew", "", "people", ""));
    assertThat(undated.days().isKnown()).isFalse();
    List<RuleNote> notes = notes(undated, "reading-hall");
    assertThat(notes.stream().map(n -> Said.of(n.finding())))
        .anyMatch(s -> s.contains("hours a shift are not known: over 4 h indoors"))
        .noneMatch(s -> s.contains("asks for none at the hours planned"));
  }

  private static RuleNote note(String subject) {
    return notes(WorkSamples.plan(SITE), "reading-hall").stream()
        .filter(n -> Said.of(n.subject()).equals(subject))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void each_rule_stands_with_its_paragraph_and_its_figure() {
    assertThat(Said.of(note("Silica, written plan").rule())).isEqualTo("29 CFR 1926.1153(g)");
    assertThat(Said.of(note("Noise").rule())).startsWith("29 CFR 1926.52 ");
    assertThat(Said.of(note("Noise").number())).startsWith("90 dBA over 8 h");
    assertThat(Said.of(note("Electricity").rule())).startsWith("29 CFR 1926.404(b)(1)");
    assertThat(Said.of(note("Carbon monoxide").rule())).startsWith("29 CFR 1926.55,");
    assertThat(Said.of(note("Carbon monoxide").number())).isEqualTo("50 ppm over 8 h");
  }

  @Test
  void a_half_mask_has_factor_10_a_full_face_50_and_filters_are_p100_or_n95() {
    assertThat(Said.of(BreathingRule.dust(Optional.empty(), true).number()))
        .isEqualTo("half mask APF 10, full face 50, with P100 (or at least N95) filters");
  }
}
