package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.floor.Floors.rectangle;
import static slabwright.floor.Floors.walled;
import static slabwright.floor.Floors.withDoor;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.units.Length;

class WayInTest {
  private static final FloorArea ROOM = withDoor(rectangle(8_000, 5_000), 0, 2_000, 1_000);

  private static List<WayIn> of(FloorArea area) {
    return WayIn.of(area, FloorTakeoff.of(area).gross(), 900, 0.1);
  }

  private static void isBox(Region box, double x0, double y0, double x1, double y1) {
    Bounds b = box.bounds();
    assertThat(b.minX()).isCloseTo(x0, within(0.01));
    assertThat(b.minY()).isCloseTo(y0, within(0.01));
    assertThat(b.maxX()).isCloseTo(x1, within(0.01));
    assertThat(b.maxY()).isCloseTo(y1, within(0.01));
  }

  /** A millimetre at both sides is kept off walls beside the doorway. */
  @Test
  void it_stands_outside_as_wide_as_the_opening_and_as_deep_as_asked() {
    assertThat(of(ROOM)).hasSize(1);
    Region box = of(ROOM).get(0).box();
    isBox(box, 2_000, -900, 3_000, 0);
    assertThat(box.area()).isCloseTo(1_000 * 900 - 900, within(1.0));
  }

  @Test
  void a_leaf_that_takes_some_of_the_opening_takes_half_of_it_at_either_side() {
    Doorway.Passage leaf = new Doorway.Passage(Optional.empty(), Optional.of(Length.mm(800)));
    FloorArea area = ROOM.withDoorways(List.of(ROOM.doorways().get(0).withPassage(leaf)));
    Region box = of(area).get(0).box();
    isBox(box, 2_100, -900, 2_900, 0);
    assertThat(box.area()).isCloseTo(800 * 900, within(1.0));
  }

  @Test
  void a_floor_walked_with_its_inside_on_the_right_has_its_outside_there_too() {
    FloorArea turned = withDoor(walled(0, 0, 0, 5_000, 8_000, 5_000, 8_000, 0), 3, 2_000, 1_000);
    isBox(of(turned).get(0).box(), 5_000, -900, 6_000, 0);
  }

  @Test
  void a_doorway_that_is_no_way_in_has_none() {
    assertThat(of(ROOM.withDoorways(List.of(ROOM.doorways().get(0).withWayIn(false))))).isEmpty();
  }

  /** A floor of two wings, 500 apart, that comes to before its own doorway. */
  @Test
  void floor_that_lies_before_the_doorway_is_not_entered_by_the_way_round() {
    FloorArea wings =
        withDoor(
            walled(
                0, 0, 2_500, 0, 2_500, 3_000, 3_000, 3_000, 3_000, 0, 8_000, 0, 8_000, 5_000, 0,
                5_000),
            1,
            500,
            1_000);
    Region box = of(wings).get(0).box();
    isBox(box, 2_500, 500, 2_999, 1_500);
    assertThat(
            box.meets(
                FloorTakeoff.of(wings)
                    .gross()
                    .minus(Region.rectangle(new Bounds(0, 0, 2_501, 5_000)))))
        .isFalse();
  }
}
