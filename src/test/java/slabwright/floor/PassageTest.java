package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.floor.Floors.box;
import static slabwright.floor.Floors.machine;
import static slabwright.floor.Floors.rectangle;
import static slabwright.floor.Floors.walled;
import static slabwright.floor.Floors.with;
import static slabwright.floor.Floors.withDoor;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.site.FloorArea;
import slabwright.site.Lie;
import slabwright.site.Machine;
import slabwright.site.MarkKind;

class PassageTest {
  private static final Machine MACHINE = machine(800, 700, 50);

  /** Two rooms of 4 m and a corridor of 700 between them. */
  private static final FloorArea TWO_ROOMS =
      withDoor(
              walled(
                  0, 0, 4_000, 0, 4_000, 1_500, 6_000, 1_500, 6_000, 0, 10_000, 0, 10_000, 4_000,
                  6_000, 4_000, 6_000, 2_200, 4_000, 2_200, 4_000, 4_000, 0, 4_000),
              0,
              1_000,
              1_000)
          .withMachines(List.of(MACHINE));

  @Test
  void the_narrowest_pass_to_the_far_room_is_its_corridor() {
    FloorTakeoff t = FloorTakeoff.of(TWO_ROOMS);
    HandPiece pocket = t.asFound().pieces(HandKind.POCKET).get(0);
    Pass pass = new Passage(t, false).narrowest(pocket).orElseThrow();
    assertThat(pass.width()).isCloseTo(700, within(2.0));
    assertThat(pass.where().x()).isBetween(3_900.0, 6_100.0);
    assertThat(pass.where().y()).isCloseTo(1_850, within(5.0));
  }

  @Test
  void no_way_leads_past_a_trench_from_wall_to_wall_until_it_is_levelled() {
    FloorArea cut =
        with(
                withDoor(rectangle(8_000, 4_000), 0, 1_000, 1_000),
                box("t", new MarkKind.Trench(Lie.PROUD, false), 4_000, 0, 4_400, 4_000))
            .withMachines(List.of(MACHINE));
    FloorTakeoff t = FloorTakeoff.of(cut);
    HandPiece pocket = t.asFound().pieces(HandKind.POCKET).get(0);
    assertThat(new Passage(t, false).narrowest(pocket)).isEmpty();
  }

  @Test
  void reach_falls_with_width_and_drops_where_the_corridor_ends() {
    FloorTakeoff t = FloorTakeoff.of(TWO_ROOMS);
    List<ReachPoint> curve =
        new Passage(t, false).curve(MACHINE, List.of(400.0, 590.0, 610.0, 800.0));
    assertThat(curve).isSortedAccordingTo((a, b) -> Double.compare(b.machine(), a.machine()));
    assertThat(curve.get(1).machine() - curve.get(2).machine()).isGreaterThan(14e6);
    assertThat(curve.get(3).machine()).isCloseTo(t.asFound().machine().area(), within(100.0));
  }

  @Test
  void corners_are_told_apart_by_the_way_they_turn() {
    Corners corners = Corners.of(FloorTakeoff.of(TWO_ROOMS).net());
    assertThat(corners.inside()).hasSize(8);
    assertThat(corners.outside()).hasSize(4);
  }
}
