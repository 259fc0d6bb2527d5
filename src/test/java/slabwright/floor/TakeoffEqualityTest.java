package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.floor.Floors.rectangle;

import org.junit.jupiter.api.Test;
import slabwright.site.FloorArea;

/** A take-off is a function of the floor area and the tolerance, and so is its equality. */
class TakeoffEqualityTest {
  private static final FloorArea ROOM = rectangle(6_000, 4_000);

  private static FloorTakeoff within(FloorArea area, double tolerance) {
    return FloorTakeoff.of(area, tolerance, () -> false);
  }

  @Test
  void one_floor_within_one_tolerance_gives_equal_takeoffs() {
    FloorArea again = rectangle(6_000, 4_000);
    assertThat(within(again, 0.5))
        .isEqualTo(within(ROOM, 0.5))
        .hasSameHashCodeAs(within(ROOM, 0.5));
  }

  @Test
  void another_tolerance_is_another_takeoff_though_the_floor_is_the_same() {
    FloorTakeoff fine = within(ROOM, 0.5);
    FloorTakeoff coarse = within(ROOM, 2);
    assertThat(fine).isNotEqualTo(coarse);
    assertThat(QuickTakeoff.of(fine)).isNotEqualTo(QuickTakeoff.of(coarse));
  }

  @Test
  void another_floor_is_another_takeoff() {
    assertThat(within(ROOM, 0.5)).isNotEqualTo(within(rectangle(6_000, 4_001), 0.5));
  }
}
