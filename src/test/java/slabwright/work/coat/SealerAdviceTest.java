package slabwright.work.coat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slabwright.site.AdviceId;
import slabwright.site.FloorUse;
import slabwright.work.Said;

class SealerAdviceTest {
  private static final FloorUse BUSY = use(false, false, true);
  private static final FloorUse IDLE = use(false, false, false);

  @Test
  void an_unmeasured_slab_without_known_barrier_gets_both_warnings_first() {
    assertThat(SealerAdvice.of(indoors(OptionalDouble.empty(), Optional.empty())))
        .extracting(ClientAdvice::id)
        .containsExactly(
            AdviceId.MOISTURE_TEST, AdviceId.BARRIER_UNKNOWN, AdviceId.TWO_PART_TRAFFIC);
  }

  @Test
  void more_than_three_pounds_of_moisture_calls_for_a_breathing_sealer() {
    assertThat(SealerAdvice.of(indoors(OptionalDouble.of(3.01), Optional.of(true))))
        .extracting(ClientAdvice::id)
        .contains(AdviceId.BREATHING_DAMP);
    assertThat(SealerAdvice.of(indoors(OptionalDouble.of(3), Optional.of(true))))
        .extracting(ClientAdvice::id)
        .doesNotContain(AdviceId.BREATHING_DAMP);
  }

  @Test
  void outdoors_it_breathes_stands_the_sun_and_carries_grit() {
    assertThat(ids(dry(true, use(true, true, true))))
        .containsExactly(AdviceId.OUTDOOR_BREATHING, AdviceId.SUN_FAST, AdviceId.GRIT);
  }

  @Test
  void outdoors_what_was_not_asked_is_a_yes_and_says_so() {
    List<ClientAdvice> advice = SealerAdvice.of(dry(true, FloorUse.NOT_ASKED));
    assertThat(advice)
        .extracting(ClientAdvice::id)
        .containsExactly(AdviceId.OUTDOOR_BREATHING, AdviceId.SUN_FAST, AdviceId.GRIT);
    assertThat(advice.subList(1, 3))
        .allMatch(a -> Said.of(a.why()).startsWith("Not asked; outdoors"));
  }

  @Test
  void indoors_what_was_not_asked_asks_and_takes_no_advice_away() {
    List<ClientAdvice> unasked = SealerAdvice.of(dry(false, FloorUse.NOT_ASKED));
    assertThat(unasked)
        .extracting(ClientAdvice::id)
        .containsExactly(AdviceId.SUN_UNKNOWN, AdviceId.WET_UNKNOWN, AdviceId.TRAFFIC_UNKNOWN);
    assertThat(unasked).allMatch(a -> Said.of(a.prefer()).startsWith("Find out whether"));
    assertThat(Said.of(unasked.get(1).prefer()))
        .contains("put grit into the last coat and measure the wet DCOF");
  }

  @Test
  void a_no_is_another_answer_than_not_asked() {
    assertThat(ids(dry(false, IDLE))).isEmpty();
    assertThat(ids(dry(true, IDLE))).containsExactly(AdviceId.OUTDOOR_BREATHING);
    assertThat(ids(dry(false, use(true, true, true))))
        .containsExactly(AdviceId.SUN_FAST, AdviceId.GRIT, AdviceId.TWO_PART_TRAFFIC);
  }

  @Test
  void a_slab_over_75_percent_humidity_calls_for_a_breathing_sealer() {
    for (double humidity : new double[] {75, 75.1}) {
      SealerParameters q = measured(OptionalDouble.of(humidity), false, IDLE);
      assertThat(SealerAdvice.of(q).isEmpty()).isEqualTo(humidity <= 75);
    }
  }

  @Test
  void all_advice_that_a_plan_may_name_is_given_somewhere() {
    Set<AdviceId> given = EnumSet.noneOf(AdviceId.class);
    for (boolean outdoors : new boolean[] {false, true}) {
      for (FloorUse use : List.of(FloorUse.NOT_ASKED, use(true, true, true))) {
        given.addAll(ids(dry(outdoors, use)));
        given.addAll(ids(measured(OptionalDouble.of(80), outdoors, use)));
      }
    }
    for (Optional<Boolean> barrier :
        List.of(Optional.<Boolean>empty(), Optional.of(true), Optional.of(false))) {
      given.addAll(ids(indoors(OptionalDouble.empty(), barrier)));
      given.addAll(ids(indoors(OptionalDouble.of(4), barrier)));
    }
    given.add(SealerAdvice.samplePanel().id());
    assertThat(given).isEqualTo(EnumSet.allOf(AdviceId.class));
  }

  private static List<AdviceId> ids(SealerParameters q) {
    return SealerAdvice.of(q).stream().map(ClientAdvice::id).toList();
  }

  private static FloorUse use(boolean wet, boolean sun, boolean traffic) {
    return new FloorUse(Optional.of(wet), Optional.of(sun), Optional.of(traffic));
  }

  private static SealerParameters dry(boolean outdoors, FloorUse use) {
    return measured(OptionalDouble.of(70), outdoors, use);
  }

  private static SealerParameters measured(OptionalDouble rh, boolean outdoors, FloorUse use) {
    return new SealerParameters(
        rh, OptionalDouble.empty(), Optional.empty(), Optional.of(true), outdoors, use);
  }

  private static SealerParameters indoors(OptionalDouble emission, Optional<Boolean> barrier) {
    return new SealerParameters(
        OptionalDouble.empty(), emission, Optional.empty(), barrier, false, BUSY);
  }
}
