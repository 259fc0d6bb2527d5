package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.floor.Floors.box;
import static slabwright.floor.Floors.machine;
import static slabwright.floor.Floors.rectangle;
import static slabwright.floor.Floors.with;
import static slabwright.floor.Floors.withDoor;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.site.EdgeClass;
import slabwright.site.FloorArea;
import slabwright.site.MarkKind;

/** A rough glance at a hall of 8 by 6 m with a booth of 2 by 1 m. */
class QuickTakeoffTest {
  private static final FloorArea HALL =
      with(
              withDoor(rectangle(8_000, 6_000), 0, 1_000, 1_000),
              box("b", new MarkKind.Booth(), 3_000, 2_500, 5_000, 3_500))
          .withMachines(List.of(machine(740, 700, 50)));

  @Test
  void a_glance_has_the_net_floor_and_its_edges_and_says_that_it_is_rough() {
    QuickTakeoff glance = QuickTakeoff.approximate(HALL, () -> false);
    assertThat(glance.net()).isCloseTo(48e6 - 2e6, within(1.0));
    assertThat(glance.isExact()).isFalse();
    FloorFigures figures = glance.figures();
    assertThat(figures.edges().get(EdgeClass.WALL)).isCloseTo(27_000, within(0.01));
    assertThat(figures.edges().get(EdgeClass.BOOTH)).isCloseTo(6_000, within(0.01));
    assertThat(figures.edges().get(EdgeClass.DOORWAY)).isCloseTo(1_000, within(0.01));
    assertThat(figures.machine() + figures.hand()).isCloseTo(figures.net(), within(1.0));
  }

  /** Strips of (740 − 700) / 2 + 50 = 70 mm along 33 m of edges, and less at the round corners. */
  @Test
  void the_glance_leaves_to_the_hand_nearly_what_the_whole_takeoff_does() {
    FloorTakeoff whole = FloorTakeoff.of(HALL);
    QuickTakeoff exact = QuickTakeoff.of(whole);
    assertThat(exact.isExact()).isTrue();
    assertThat(exact.figures().hand()).isBetween(33_000 * 70.0, 33_000 * 70.0 + 4e5);
    assertThat(QuickTakeoff.approximate(HALL, () -> false).figures().hand())
        .isCloseTo(exact.figures().hand(), within(1e5));
  }

  @Test
  void two_glances_at_one_floor_are_equal_unless_one_is_rough() {
    QuickTakeoff glance = QuickTakeoff.approximate(HALL, () -> false);
    assertThat(glance)
        .isEqualTo(QuickTakeoff.approximate(HALL, () -> false))
        .hasSameHashCodeAs(QuickTakeoff.approximate(HALL, () -> false))
        .isNotEqualTo(QuickTakeoff.of(FloorTakeoff.of(HALL)))
        .isNotEqualTo(QuickTakeoff.approximate(HALL.withMachines(List.of()), () -> false));
  }
}
