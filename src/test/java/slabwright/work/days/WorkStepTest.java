package slabwright.work.days;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slabwright.work.step.AirEffect;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepMeans;
import slabwright.work.step.StepPlace;
import slabwright.work.step.StepSubject;
import slabwright.work.step.StepType;
import slabwright.work.step.ToolKind;

/** What a step takes of a crew and its tools. */
class WorkStepTest {
  private static final Duration HOUR = Duration.ofHours(1);
  private static final WorkStep COAT = TestSteps.coat("c", "coat", "hall", HOUR, 2);

  private static WorkStep of(StepKind kind, ToolKind... tools) {
    StepSubject subject = StepSubject.of(kind, StepPlace.WHOLE_FLOOR);
    return COAT.withType(
        StepType.prep("hall", subject, StepMeans.HAND, Set.of(tools), AirEffect.DUST));
  }

  @Test
  void a_larger_crew_unloads_and_packs_up_together_and_coats_as_before() {
    assertThat(of(StepKind.SET_UP).forCrew(5).people()).isEqualTo(5);
    assertThat(of(StepKind.STRIKE).forCrew(5).people()).isEqualTo(5);
    assertThat(COAT.forCrew(5).people()).isEqualTo(2);
    assertThat(of(StepKind.SET_UP_FAN).forCrew(5).people()).isEqualTo(2);
  }

  @Test
  void who_grinds_has_a_tool_each_and_other_steps_share_one() {
    assertThat(TestSteps.byHand("g", "hall", HOUR, 3).each(ToolKind.VACUUM)).isEqualTo(3);
    assertThat(TestSteps.pausing("g", "g", "hall", HOUR, 2).each(ToolKind.FLOOR_GRINDER))
        .isEqualTo(2);
    assertThat(of(StepKind.MIST_COAT, ToolKind.SPRAYER).each(ToolKind.SPRAYER)).isEqualTo(1);
    assertThat(of(StepKind.MIST_COAT, ToolKind.SPRAYER).each(ToolKind.VACUUM)).isZero();
  }

  @Test
  void a_step_needs_somebody_and_no_time_below_none() {
    assertThat(COAT.withLength(Duration.ZERO).people()).isEqualTo(2);
    assertThatThrownBy(() -> COAT.withPeople(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> COAT.withLength(HOUR.negated()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
