package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

class FreeEndsTest {
  private static final Region ROOM = box(0, 0, 9_000, 6_000);

  private static Region box(double x0, double y0, double x1, double y1) {
    return Region.rectangle(new Bounds(x0, y0, x1, y1));
  }

  private static List<Vec> ends(Region... standing) {
    return FreeEnds.of(ROOM.minus(Region.union(List.of(standing))));
  }

  @Test
  void a_thin_wall_that_stands_free_has_two_ends_and_one_from_a_wall_has_one() {
    assertThat(ends(box(2_000, 3_000, 5_000, 3_120)))
        .containsExactlyInAnyOrder(new Vec(2_000, 3_060), new Vec(5_000, 3_060));
    assertThat(ends(box(4_000, -10, 4_120, 2_000))).containsExactly(new Vec(4_060, 2_000));
  }

  @Test
  void a_square_post_has_no_ends_nor_has_a_plinth_thicker_than_300() {
    assertThat(ends(box(2_000, 3_000, 2_200, 3_200))).isEmpty();
    assertThat(ends(box(2_000, 3_000, 2_200, 3_210))).isEmpty();
    assertThat(ends(box(2_000, 3_000, 5_000, 3_301))).isEmpty();
    assertThat(ends(box(2_000, 3_000, 5_000, 3_300))).hasSize(2);
  }

  @Test
  void a_niche_and_a_step_of_the_wall_end_nothing() {
    assertThat(FreeEnds.of(ROOM.union(box(4_000, 5_990, 4_150, 7_000)))).isEmpty();
    assertThat(FreeEnds.of(ROOM.union(box(5_000, 5_990, 9_000, 6_150)))).isEmpty();
  }
}
