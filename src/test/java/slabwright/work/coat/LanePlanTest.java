package slabwright.work.coat;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

class LanePlanTest {
  private static final Region ROOM = Region.of(Ring.rectangle(0, 0, 8000, 4000));

  @Test
  void with_the_door_in_the_short_wall_the_lanes_run_across_and_come_towards_it() {
    LanePlan plan =
        LanePlan.of(LaneParameters.of(new LaneGrid(ROOM, new Vec(8000, 2000), 400), 1e8));
    assertThat(plan.lanes()).hasSize(21);
    assertThat(plan.lanes().get(0).region().bounds().minX()).isZero();
    assertThat(plan.lanes().get(20).region().bounds().maxX()).isEqualTo(8000);
  }

  @Test
  void the_last_lane_is_rolled_from_both_ends_to_the_door() {
    LanePlan plan =
        LanePlan.of(LaneParameters.of(new LaneGrid(ROOM, new Vec(8000, 2000), 400), 1e8));
    for (Lane last : plan.lanes().subList(19, 21)) {
      assertThat(last.walk().points().get(1).distanceTo(new Vec(8000, 2000))).isLessThan(401);
    }
  }

  @Test
  void the_edge_stays_wet_for_two_lanes() {
    LanePlan plan =
        LanePlan.of(LaneParameters.of(new LaneGrid(ROOM, new Vec(8000, 2000), 400), 1e8));
    assertThat(plan.worstEdge().toSeconds()).isBetween(114L, 116L);
    assertThat(plan.length().toSeconds()).isBetween(1151L, 1153L);
  }

  @Test
  void waiting_for_the_next_batch_counts_against_the_wet_edge() {
    LaneParameters job =
        new LaneParameters(
            new LaneGrid(ROOM, new Vec(8000, 2000), 400), 1e8, 16e6, Duration.ofMinutes(6));
    assertThat(LanePlan.of(job).worstEdge()).isGreaterThan(Duration.ofMinutes(7));
  }

  @Test
  void a_piece_of_floor_without_a_way_to_it_is_named() {
    Region two = ROOM.union(Region.of(Ring.rectangle(9000, 0, 9300, 4000)));
    LanePlan plan = LanePlan.of(LaneParameters.of(new LaneGrid(two, new Vec(0, 2000), 400), 1e8));
    assertThat(plan.cutOff()).containsExactly(1);
  }

  @Test
  void a_neck_too_narrow_to_walk_is_marked() {
    Region nook = ROOM.union(Region.of(Ring.rectangle(8000, 0, 9000, 300)));
    LanePlan plan = LanePlan.of(LaneParameters.of(new LaneGrid(nook, new Vec(0, 2000), 400), 1e8));
    assertThat(plan.lanes()).anyMatch(Lane::narrow);
  }

  @Test
  void an_empty_floor_has_no_lanes() {
    assertThat(
            LanePlan.of(LaneParameters.of(new LaneGrid(Region.empty(), Vec.ZERO, 400), 1e8))
                .lanes())
        .isEmpty();
  }
}
