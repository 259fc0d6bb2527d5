package slabwright.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.desk.model.input.Snap;
import slabwright.shape.Line;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;

class SnapperTest {
  private static final Line WALL = Line.of(new Vec(0, 0), new Vec(8000, 2000));
  private final Snapper snapper =
      new Snapper(List.of(new Vec(0, 0), new Vec(5000, 3000)), List.of(WALL), 100);

  @Test
  void a_corner_wins_over_its_edge() {
    Snap s = snapper.snap(new Vec(60, 40), Optional.empty(), 150);
    assertThat(s.kind()).isEqualTo(Snap.Kind.CORNER);
    assertThat(s.at()).isEqualTo(new Vec(0, 0));
  }

  @Test
  void near_an_edge_the_touch_lies_on_it() {
    Snap s = snapper.snap(new Vec(4000, 1060), Optional.empty(), 150);
    assertThat(s.kind()).isEqualTo(Snap.Kind.EDGE);
    assertThat(SegmentGeometry.distance(WALL, s.at())).isLessThan(1e-6);
  }

  @Test
  void a_line_nearly_parallel_to_a_wall_becomes_parallel() {
    Snap s = snapper.snap(new Vec(5950, 6520), Optional.of(new Vec(2000, 5500)), 120);
    assertThat(s.kind()).isEqualTo(Snap.Kind.PARALLEL);
    Vec way = s.at().minus(new Vec(2000, 5500)).unit();
    assertThat(Math.abs(way.cross(new Vec(8000, 2000).unit()))).isLessThan(1e-9);
  }

  @Test
  void a_level_line_stops_abreast_of_a_corner() {
    Snap s = snapper.snap(new Vec(5050, 6040), Optional.of(new Vec(1000, 6000)), 120);
    assertThat(s.at()).isEqualTo(new Vec(5000, 6000));
  }

  @Test
  void far_from_everything_only_the_grid_holds() {
    Snap s = snapper.snap(new Vec(2031, 7968), Optional.empty(), 120);
    assertThat(s.at()).isEqualTo(new Vec(2000, 8000));
  }
}
