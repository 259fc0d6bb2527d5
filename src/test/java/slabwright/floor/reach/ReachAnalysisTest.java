package slabwright.floor.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.floor.Floors.box;
import static slabwright.floor.Floors.machine;
import static slabwright.floor.Floors.rectangle;
import static slabwright.floor.Floors.walled;
import static slabwright.floor.Floors.with;
import static slabwright.floor.Floors.withDoor;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.floor.FloorTakeoff;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.site.MarkKind;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;

class ReachAnalysisTest {
  private static final Machine MACHINE = machine(800, 700, 50);

  /** A hall of 8 by 4 m with a bay of 0.4 by 2 m and, to its right, one of 0.4 by 3 m. */
  private static FloorArea bays(Machine... machines) {
    FloorArea hall =
        walled(
            0, 0, 8_000, 0, 8_000, 4_000, 5_400, 4_000, 5_400, 7_000, 5_000, 7_000, 5_000, 4_000,
            2_400, 4_000, 2_400, 6_000, 2_000, 6_000, 2_000, 4_000, 0, 4_000);
    return withDoor(hall, 0, 1_000, 1_000).withMachines(List.of(machines));
  }

  private static Machine passing(Machine machine, double mm) {
    return machine.withTravel(
        new Machine.Travel(machine.travel().length(), Optional.of(Length.mm(mm))));
  }

  /** Each bay but for what the round body covers of its mouth. */
  @Test
  void the_largest_pocket_is_told_first() {
    List<PocketAccess> pockets = ReachAnalysis.of(FloorTakeoff.of(bays(MACHINE))).pockets();
    assertThat(pockets).hasSize(2);
    assertThat(pockets.get(0).pocket().area()).isBetween(1.17e6, 1.2e6);
    assertThat(pockets.get(1).pocket().area()).isBetween(0.77e6, 0.8e6);
    assertThat(pockets).allMatch(p -> Math.abs(p.pass().orElseThrow().width() - 400) < 2);
  }

  @Test
  void a_way_to_a_pocket_is_left_the_room_that_the_narrowest_machine_needs_to_roll() {
    Machine wide = passing(MACHINE, 60);
    Machine narrow = passing(machine(500, 450, 20), 30);
    PocketAccess pocket = ReachAnalysis.of(FloorTakeoff.of(bays(wide, narrow))).pockets().get(0);
    assertThat(pocket.clearance()).isEqualTo(30);
    assertThat(pocket.body().orElseThrow()).isCloseTo(400 - 2 * 30, within(2.0));
  }

  @Test
  void without_a_machine_there_is_neither_pocket_nor_passage_nor_curve() {
    ReachAnalysis none = ReachAnalysis.of(FloorTakeoff.of(bays()));
    assertThat(none.pockets()).isEmpty();
    assertThat(none.passages()).isEmpty();
    assertThat(none.curves()).isEmpty();
  }

  @Test
  void a_curve_is_drawn_as_found_and_where_trenches_stop_machines_one_once_they_are_level() {
    FloorArea hall = withDoor(rectangle(4_000, 3_000), 0, 1_000, 1_000);
    FloorArea cut =
        with(hall, box("t", new MarkKind.Trench(TrenchLevel.PROUD, false), 2_400, 0, 2_700, 3_000));
    ReachAnalysis plain = ReachAnalysis.of(FloorTakeoff.of(hall.withMachines(List.of(MACHINE))));
    ReachAnalysis both = ReachAnalysis.of(FloorTakeoff.of(cut.withMachines(List.of(MACHINE))));
    assertThat(plain.curves()).hasSize(1);
    assertThat(both.curves()).hasSize(2);
    assertThat(both.curves().get(1).share(800)).isGreaterThan(both.curves().get(0).share(800));
  }

  @Test
  void without_a_way_in_no_curve_is_drawn() {
    FloorArea hall = withDoor(rectangle(4_000, 3_000), 0, 1_000, 1_000);
    Doorway shut = hall.doorways().get(0).withWayIn(false);
    FloorArea area = hall.withDoorways(List.of(shut)).withMachines(List.of(MACHINE));
    assertThat(ReachAnalysis.of(FloorTakeoff.of(area)).curves()).isEmpty();
  }
}
