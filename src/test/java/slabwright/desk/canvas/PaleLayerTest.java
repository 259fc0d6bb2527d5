package slabwright.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.desk.model.scene.PaleFloor;
import slabwright.drawing.Text;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.OutlineShape;
import slabwright.site.Spot;

class PaleLayerTest {
  private static final FloorArea STORE =
      FloorArea.of(
          "a2",
          "Store",
          List.of(
              OutlinePiece.wall(Spot.mm(0, 0)),
              OutlinePiece.wall(Spot.mm(8000, 0)),
              OutlinePiece.wall(Spot.mm(8000, 6000)),
              OutlinePiece.wall(Spot.mm(0, 6000))));

  private static List<Vec> names(Bounds seen, List<Bounds> taken) {
    OutlineShape shape = OutlineShape.of(STORE.outline(), 1);
    Region floor = shape.region();
    PaleFloor store = new PaleFloor(STORE, shape, floor, List.of());
    return PaleLayer.names(List.of(store), seen, taken, 100).stream()
        .map(t -> ((Text) t).at())
        .toList();
  }

  @Test
  void the_name_of_a_floor_beside_stands_in_the_part_of_it_that_is_seen() {
    assertThat(names(new Bounds(-5000, -5000, 20_000, 20_000), List.of()))
        .containsExactly(new Vec(4000, 3000));
    Bounds upper = new Bounds(-5000, 4000, 20_000, 20_000);
    assertThat(names(upper, List.of())).containsExactly(new Vec(4000, 5000));
  }

  @Test
  void it_is_left_out_where_too_little_is_seen_or_all_is_taken() {
    Bounds strip = new Bounds(-5000, 5800, 20_000, 20_000);
    assertThat(names(strip, List.of())).isEmpty();
    Bounds all = new Bounds(-5000, -5000, 20_000, 20_000);
    assertThat(names(all, List.of(all))).isEmpty();
  }
}
