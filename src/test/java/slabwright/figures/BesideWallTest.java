package slabwright.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;

class BesideWallTest {
  private static final Region FLOOR = Region.rectangle(new Bounds(0, 0, 1000, 600));

  private static List<Vec> moved(Vec... points) {
    return BesideWall.lines(List.of(Line.of(points)), FLOOR, 50).get(0).points();
  }

  @Test
  void a_line_on_a_wall_moves_onto_the_floor_whichever_way_it_runs() {
    assertThat(moved(new Vec(100, 0), new Vec(500, 0)))
        .containsExactly(new Vec(100, 50), new Vec(500, 50));
    assertThat(moved(new Vec(500, 0), new Vec(100, 0)))
        .containsExactly(new Vec(500, 50), new Vec(100, 50));
  }

  @Test
  void a_line_round_a_corner_stays_beside_both_walls() {
    assertThat(moved(new Vec(400, 0), new Vec(0, 0), new Vec(0, 300)))
        .containsExactly(new Vec(400, 50), new Vec(50, 50), new Vec(50, 300));
  }

  @Test
  void a_line_in_the_midst_of_the_floor_stays() {
    assertThat(moved(new Vec(100, 300), new Vec(500, 300)))
        .containsExactly(new Vec(100, 300), new Vec(500, 300));
  }
}
