package slabwright.work.coat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SealerAdviceTest {
  @Test
  void an_unmeasured_slab_without_known_barrier_gets_both_warnings_first() {
    assertThat(SealerAdvice.of(indoors(OptionalDouble.empty(), Optional.empty())))
        .extracting(Advice::id)
        .containsExactly("moisture-test", "barrier-unknown", "two-part-traffic");
  }

  @Test
  void more_than_three_pounds_of_moisture_calls_for_a_breathing_sealer() {
    assertThat(SealerAdvice.of(indoors(OptionalDouble.of(3.01), Optional.of(true))))
        .extracting(Advice::id)
        .contains("breathing-damp");
    assertThat(SealerAdvice.of(indoors(OptionalDouble.of(3), Optional.of(true))))
        .extracting(Advice::id)
        .doesNotContain("breathing-damp");
  }

  @Test
  void outdoors_it_breathes_stands_the_sun_and_carries_grit() {
    SealerQuestions q =
        new SealerQuestions(
            OptionalDouble.of(70),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.of(true),
            true,
            true,
            true,
            true);
    assertThat(SealerAdvice.of(q))
        .extracting(Advice::id)
        .containsExactly("outdoor-breathing", "sun-fast", "grit");
  }

  @Test
  void a_slab_over_75_percent_humidity_calls_for_a_breathing_sealer() {
    for (double humidity : new double[] {75, 75.1}) {
      SealerQuestions q =
          new SealerQuestions(
              OptionalDouble.of(humidity),
              OptionalDouble.empty(),
              Optional.empty(),
              Optional.of(true),
              false,
              false,
              false,
              false);
      assertThat(SealerAdvice.of(q).isEmpty()).isEqualTo(humidity <= 75);
    }
  }

  private static SealerQuestions indoors(OptionalDouble emission, Optional<Boolean> barrier) {
    return new SealerQuestions(
        OptionalDouble.empty(), emission, Optional.empty(), barrier, false, false, false, true);
  }
}
