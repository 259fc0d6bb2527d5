package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.site.Finish;
import slabwright.work.coat.CoatPlan;

/** The coats of the tram hall one after the other, without a day plan. */
class StepTimingTest {
  private static final AreaWorkPlan HALL = WorkSamples.plan(WorkSamples.tramHall()).areas().get(0);
  private static final List<StepTiming> ALL = timings(HALL.coats());

  private static List<StepTiming> timings(List<CoatPlan> coats) {
    return StepTiming.inSequence(HALL.floor(), coats).maybe().orElseThrow();
  }

  private static double minutes(CoatPlan coat) {
    return coat.coatTime().maybe().orElseThrow().toSeconds() / 60.0;
  }

  @Test
  void a_coat_begins_when_the_one_before_it_ends() {
    assertThat(ALL.get(0).from()).isZero();
    for (int i = 1; i < ALL.size(); i++) {
      StepTiming before = ALL.get(i - 1);
      assertThat(ALL.get(i).from()).isCloseTo(before.from() + before.minutes(), within(1e-9));
    }
  }

  @Test
  void every_coat_of_the_whole_floor_takes_its_own_time() {
    CoatPlan first = HALL.coats().get(0);
    assertThat(first.job().target()).isEqualTo(Finish.Target.WHOLE_FLOOR);
    assertThat(timings(List.of(first)))
        .hasSize(first.job().coats())
        .allSatisfy(t -> assertThat(t.minutes()).isCloseTo(minutes(first), within(1e-9)));
  }

  /** And a minute at least, so that its vapour is spread over some time. */
  @Test
  void a_mist_coat_takes_its_openings_share_of_the_time() {
    CoatPlan mist =
        HALL.coats().stream()
            .filter(c -> c.job().target() == Finish.Target.INLAY)
            .findFirst()
            .orElseThrow();
    List<InlayTakeoff.StencilDye> dyes = HALL.floor().inlays().get(0).dyes();
    List<StepTiming> all = timings(List.of(mist));
    assertThat(all).hasSize(mist.job().coats() * dyes.size());
    for (int s = 0; s < dyes.size(); s++) {
      double share = minutes(mist) * dyes.get(s).openings() / mist.job().mm2();
      assertThat(all.get(s).minutes()).isCloseTo(Math.max(1, share), within(1e-9));
    }
    assertThat(all).anyMatch(t -> t.minutes() > 1);
  }
}
