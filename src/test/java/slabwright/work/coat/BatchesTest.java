package slabwright.work.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.work.Said;
import slabwright.work.book.Figure;
import slabwright.work.book.Kit;

class BatchesTest {
  @Test
  void a_kit_that_outlasts_its_working_time_asks_for_hands_and_is_never_made_smaller() {
    Figure<Batches> plan = job(20e6, 10e6, 1, Optional.empty()).plan();
    assertThat(Said.of(plan.text(Object::toString)))
        .isEqualTo(
            "add hands: one kit takes 100 min to lay with 1 at it and can be laid for 35 min; it"
                + " takes 3");
    assertThat(job(20e6, 10e6, 3, Optional.empty()).plan().isKnown()).isTrue();
    assertThat(job(20e6, 10e6, 2, Optional.empty()).plan().isKnown()).isFalse();
  }

  @Test
  void the_last_batch_is_a_whole_kit_that_is_not_used_up() {
    Batches b = job(25e6, 10e6, 3, Optional.empty()).plan().maybe().orElseThrow();
    assertThat(b.list()).extracting(Batches.Batch::mixed).containsExactly(10e6, 10e6, 10e6);
    assertThat(b.list().get(2).used()).isCloseTo(5e6, within(1e-6));
    assertThat(b.kits()).isEqualTo(3);
  }

  @Test
  void a_kit_larger_than_the_mixing_bucket_is_refused() {
    assertThat(Said.of(job(25e6, 10e6, 5, Optional.of(5e6)).plan().text(Object::toString)))
        .contains("mixes at once");
  }

  @Test
  void kits_leave_the_least_over_and_cost_what_they_cost() {
    Kit gallon = new Kit(1, Figure.known(new BigDecimal("54.00")));
    Kit pail = new Kit(5, Figure.known(new BigDecimal("240.00")));
    Kits kits = Kits.of(11.2, List.of(gallon, pail));
    assertThat(kits.lines()).containsExactly(new Kits.Line(pail, 2), new Kits.Line(gallon, 2));
    assertThat(kits.price()).isEqualTo(Figure.known(new BigDecimal("588.00")));
    assertThat(Kits.of(4.5, List.of(gallon, pail)).count()).isEqualTo(1);
  }

  @Test
  void batches_run_out_along_the_lanes() {
    Region room = Region.of(Ring.rectangle(0, 0, 8000, 4000));
    LanePlan lanes = LanePlan.of(LaneParameters.of(new LaneGrid(room, new Vec(8000, 0), 400), 1e8));
    Batches b = job(3.2e6, 1e6, 3, Optional.empty()).plan().maybe().orElseThrow();
    assertThat(lanes.lanes()).hasSize(20);
    assertThat(BatchLanes.of(b, lanes))
        .extracting(BatchLanes::batch, BatchLanes::from, BatchLanes::to)
        .containsExactly(tuple(1, 1, 20));
    Batches small = job(3.2e6, 1e6, 3, Optional.of(1e6)).plan().maybe().orElseThrow();
    assertThat(BatchLanes.of(small, lanes)).extracting(BatchLanes::begins).isSorted();
    assertThat(BatchLanes.of(small, lanes))
        .extracting(BatchLanes::batch, BatchLanes::from, BatchLanes::to)
        .containsExactly(tuple(1, 1, 7), tuple(2, 7, 13), tuple(3, 13, 19), tuple(4, 19, 20));
  }

  private static BatchParameters job(
      double needed, double kit, int people, Optional<Double> largest) {
    return new BatchParameters(
        needed,
        List.of(kit),
        false,
        Duration.ofMinutes(40),
        Duration.ofMinutes(5),
        largest,
        10,
        0,
        6e7,
        people);
  }
}
