package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.floor.Floors.rectangle;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.PieceKind;
import slabwright.units.Length;

/** Of a hall of 8 by 6 m with its corner at (0, 0). */
class WayOutTest {
  private static final FloorArea HALL = rectangle(8_000, 6_000);

  private static Doorway door(int piece, double offset, boolean wayIn) {
    return new Doorway("d" + piece, "", piece, Length.mm(offset), Length.mm(1_000), wayIn);
  }

  @Test
  void a_crew_leaves_by_the_middle_of_the_first_way_in() {
    FloorArea hall = HALL.withDoorways(List.of(door(0, 500, false), door(1, 2_000, true)));
    assertThat(WayOut.of(hall)).contains(new Vec(8_000, 2_500));
  }

  @Test
  void where_machines_come_in_nowhere_a_crew_leaves_by_the_first_doorway() {
    FloorArea hall = HALL.withDoorways(List.of(door(3, 500, false), door(1, 2_000, false)));
    assertThat(WayOut.of(hall)).contains(new Vec(0, 5_000));
  }

  @Test
  void without_a_doorway_a_crew_leaves_over_the_first_open_edge() {
    List<OutlinePiece> outline = new ArrayList<>(HALL.outline());
    OutlinePiece top = outline.get(2);
    outline.set(2, new OutlinePiece(top.from(), PieceKind.OPEN_EDGE, top.rise()));
    assertThat(WayOut.of(HALL.withOutline(outline))).contains(new Vec(4_000, 6_000));
  }

  @Test
  void between_walls_alone_no_way_out_is_known() {
    assertThat(WayOut.of(HALL)).isEmpty();
  }
}
