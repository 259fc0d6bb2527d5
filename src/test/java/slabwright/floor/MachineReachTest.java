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
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.floor.reach.MachinePassage;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.shape.Arcs;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.site.MarkKind;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;
import slabwright.words.Words;

/** Figures solved by hand: B 800, G 700, c 50, so it needs 900 and leaves a strip of 100. */
class MachineReachTest {
  private static final Machine MACHINE = machine(800, 700, 50);

  /** The head's round edge leaves (1 - pi/4) 350² in each square corner. */
  private static final double CORNER = (1 - Math.PI / 4) * 350 * 350;

  /** In a doorway of 1000 the strip is ground but for quarter discs of 100 at the jambs. */
  private static final double DOOR = 1_000 * 100 - Math.PI / 2 * 100 * 100;

  @Test
  void a_machine_drives_in_beside_a_pit_that_ends_in_the_gate() {
    FloorArea hall =
        with(
                withDoor(rectangle(6_000, 6_000), 3, 1_000, 4_000),
                box("pit", new MarkKind.Trench(TrenchLevel.PROUD, false), 0, 2_700, 6_000, 3_300))
            .withMachines(List.of(machine(800, 700, 50)));
    FloorTakeoff t = FloorTakeoff.of(hall);
    assertThat(t.asFound().pieces(HandWorkKind.POCKET)).isEmpty();
    assertThat(t.asFound().machine().parts()).hasSize(2);
  }

  @Test
  void a_rectangle_keeps_a_strip_along_its_walls_and_round_corners() {
    GrindingSplit g = grind(withDoor(rectangle(6_000, 4_000), 0, 2_000, 1_000)).asFound();
    double ground = 5_800.0 * 3_800 - 4 * CORNER + DOOR;
    assertThat(g.machine().area()).isCloseTo(ground, within(1_000.0));
    assertThat(g.hand().area()).isCloseTo(24e6 - ground, within(1_000.0));
  }

  @Test
  void hand_work_in_a_rectangle_is_one_strip_and_four_corners() {
    GrindingSplit g = grind(withDoor(rectangle(6_000, 4_000), 0, 2_000, 1_000)).asFound();
    assertThat(g.pieces(HandWorkKind.CORNER)).hasSize(4);
    assertThat(g.handArea(HandWorkKind.CORNER))
        .isCloseTo(4 * (1 - Math.PI / 4) * 450 * 450, within(1_000.0));
    assertThat(g.pieces(HandWorkKind.POCKET)).isEmpty();
    assertThat(g.handArea(HandWorkKind.EDGE_STRIP) + g.handArea(HandWorkKind.CORNER))
        .isCloseTo(g.hand().area(), within(10.0));
  }

  @Test
  void an_l_turns_its_inner_corner_with_a_quarter_disc() {
    FloorArea l = walled(0, 0, 6_000, 0, 6_000, 3_000, 3_000, 3_000, 3_000, 6_000, 0, 6_000);
    GrindingSplit g = grind(withDoor(l, 0, 2_000, 1_000)).asFound();
    double inset = 27e6 - 24_000 * 100 + 5 * 100 * 100 - Math.PI / 4 * 100 * 100;
    assertThat(g.machine().area()).isCloseTo(inset - 5 * CORNER + DOOR, within(1_000.0));
  }

  @Test
  void a_corridor_narrower_than_the_body_makes_the_room_behind_it_a_pocket() {
    FloorArea two =
        walled(
            0, 0, 4_000, 0, 4_000, 1_500, 6_000, 1_500, 6_000, 0, 10_000, 0, 10_000, 4_000, 6_000,
            4_000, 6_000, 2_200, 4_000, 2_200, 4_000, 4_000, 0, 4_000);
    GrindingSplit g = grind(withDoor(two, 0, 1_000, 1_000)).asFound();
    double bulge = 450 - Math.sqrt(450 * 450 - 350 * 350);
    double pocket = 16e6 + 700 * 2_000 - Arcs.segmentArea(700, bulge);
    assertThat(g.pieces(HandWorkKind.POCKET))
        .singleElement()
        .satisfies(p -> assertThat(p.area()).isCloseTo(pocket, within(500.0)));
    assertThat(g.pieces(HandWorkKind.POCKET).get(0).place().x()).isBetween(6_000.0, 10_000.0);
  }

  @Test
  void a_corridor_just_as_wide_as_body_and_clearances_lets_it_through() {
    FloorArea two =
        walled(
            0, 0, 4_000, 0, 4_000, 1_500, 6_000, 1_500, 6_000, 0, 10_000, 0, 10_000, 4_000, 6_000,
            4_000, 6_000, 2_400, 4_000, 2_400, 4_000, 4_000, 0, 4_000);
    GrindingSplit g = grind(withDoor(two, 0, 1_000, 1_000)).asFound();
    assertThat(g.pieces(HandWorkKind.POCKET)).isEmpty();
    assertThat(g.machine().contains(new Vec(5_000, 1_950))).as("and works there").isTrue();
  }

  @Test
  void a_door_narrower_than_body_and_passing_clearance_lets_nothing_in() {
    GrindingSplit g = grind(withDoor(rectangle(6_000, 4_000), 0, 2_000, 823)).asFound();
    assertThat(g.machine().isEmpty()).isTrue();
    assertThat(g.hand().area()).isEqualTo(24e6);
  }

  @Test
  void a_door_just_as_wide_as_body_and_passing_clearance_lets_it_in() {
    GrindingSplit g = grind(withDoor(rectangle(6_000, 4_000), 0, 2_000, 824)).asFound();
    assertThat(g.machine().area()).isGreaterThan(21e6);
  }

  @Test
  void a_door_whose_leaf_takes_some_of_its_width_is_as_wide_as_it_is_clear() {
    FloorArea hall = withDoor(rectangle(6_000, 4_000), 0, 2_000, 900);
    assertThat(grind(clear(hall, 823)).asFound().machine().isEmpty()).isTrue();
    assertThat(grind(clear(hall, 824)).asFound().machine().area()).isGreaterThan(21e6);
  }

  private static FloorArea clear(FloorArea hall, double mm) {
    Doorway.Passage passage = new Doorway.Passage(Optional.empty(), Optional.of(Length.mm(mm)));
    return hall.withDoorways(List.of(hall.doorways().get(0).withPassage(passage)));
  }

  @Test
  void a_machine_of_29_in_goes_through_a_door_of_32_in_whatever_it_keeps_to_walls() {
    Machine grinder = new Machine("g", "", Length.inches(29), Length.inches(27), Length.inches(2));
    FloorArea hall = withDoor(rectangle(6_000, 4_000), 0, 2_000, 32 * 25.4);
    FloorTakeoff t = FloorTakeoff.of(hall.withMachines(List.of(grinder)));
    assertThat(t.asFound().machine().area()).isGreaterThan(20e6);
    MachinePassage door = ReachAnalysis.of(t).passages().get(0);
    assertThat(door.fits()).isTrue();
    assertThat(door.spare()).isCloseTo(3 * 25.4 - 24, within(1e-9));
  }

  @Test
  void a_corridor_that_it_passes_but_has_no_room_to_work_in_is_a_strip_by_hand() {
    FloorArea two =
        walled(
            0, 0, 4_000, 0, 4_000, 1_500, 6_000, 1_500, 6_000, 0, 10_000, 0, 10_000, 4_000, 6_000,
            4_000, 6_000, 2_350, 4_000, 2_350, 4_000, 4_000, 0, 4_000);
    GrindingSplit g = grind(withDoor(two, 0, 1_000, 1_000)).asFound();
    assertThat(g.machine().contains(new Vec(8_000, 2_000))).isTrue();
    assertThat(g.machine().contains(new Vec(5_000, 1_925))).isFalse();
    assertThat(g.pieces(HandWorkKind.POCKET)).isEmpty();
  }

  @Test
  void a_machine_that_works_closer_to_walls_than_it_rolls_still_grinds_up_to_them() {
    FloorArea hall = withDoor(rectangle(6_000, 4_000), 0, 2_000, 1_000);
    FloorTakeoff t =
        FloorTakeoff.of(hall.withMachines(List.of(machine(800, 800, 0))), 0.1, () -> false);
    double corners = (4 - Math.PI) * 400 * 400;
    assertThat(t.asFound().machine().area()).isCloseTo(24e6 - corners, within(1_000.0));
  }

  @Test
  void a_doorway_that_is_no_way_in_is_a_wall_to_the_machine() {
    FloorArea open = withDoor(rectangle(6_000, 4_000), 0, 2_000, 1_000);
    var d = open.doorways().get(0);
    var shut = new Doorway(d.id(), d.name(), d.piece(), d.offset(), d.width(), false);
    FloorTakeoff t = grind(open.withDoorways(List.of(shut)));
    assertThat(t.asFound().machine().isEmpty()).isTrue();
    assertThat(t.notes()).anyMatch(n -> Words.english().say(n.message()).contains("way in"));
  }

  @Test
  void an_outline_drawn_clockwise_gives_the_same_reach() {
    FloorArea turned = withDoor(walled(0, 0, 0, 4_000, 6_000, 4_000, 6_000, 0), 3, 3_000, 1_000);
    assertThat(grind(turned).asFound().machine().area())
        .isCloseTo(5_800.0 * 3_800 - 4 * CORNER + DOOR, within(1_000.0));
  }

  @Test
  void a_proud_trench_cuts_the_floor_in_two_until_it_is_levelled() {
    FloorArea cut =
        with(
            withDoor(rectangle(8_000, 4_000), 0, 1_000, 1_000),
            box("t", new MarkKind.Trench(TrenchLevel.PROUD, false), 4_000, 0, 4_400, 4_000));
    FloorTakeoff t = grind(cut);
    assertThat(t.asFound().handArea(HandWorkKind.TRENCH)).isCloseTo(1.6e6, within(1.0));
    assertThat(t.asFound().pieces(HandWorkKind.POCKET))
        .singleElement()
        .satisfies(p -> assertThat(p.area()).isCloseTo(3_600.0 * 4_000, within(500.0)));
    assertThat(t.levelled().machine().area())
        .isCloseTo(7_800.0 * 3_800 - 4 * CORNER + DOOR, within(1_000.0));
    assertThat(t.levelled().pieces(HandWorkKind.POCKET)).isEmpty();
  }

  @Test
  void a_flush_trench_does_not_stop_the_machine() {
    FloorArea cut =
        with(
            withDoor(rectangle(8_000, 4_000), 0, 1_000, 1_000),
            box("t", new MarkKind.Trench(TrenchLevel.FLUSH, false), 4_000, 0, 4_400, 4_000));
    assertThat(grind(cut).asFound().pieces(HandWorkKind.TRENCH)).isEmpty();
  }

  @Test
  void a_drain_is_driven_over_but_ground_by_hand() {
    FloorArea drained =
        with(
            withDoor(rectangle(8_000, 4_000), 0, 1_000, 1_000),
            box("d", new MarkKind.DrainOrBox(), 4_000, 2_000, 4_300, 2_300));
    GrindingSplit g = grind(drained).asFound();
    assertThat(g.handArea(HandWorkKind.HAND_ONLY)).isCloseTo(300 * 300, within(0.1));
    assertThat(g.machine().contains(new Vec(4_350, 2_150))).isTrue();
  }

  @Test
  void the_box_outside_a_way_in_opens_no_wall_beside_it() {
    FloorArea l = walled(0, 0, 3_000, 0, 3_000, -3_000, 8_000, -3_000, 8_000, 4_000, 0, 4_000);
    FloorArea door = withDoor(l, 0, 2_000, 1_000);
    FloorArea split = with(door, box("b", new MarkKind.Booth(), 3_000, -100, 8_000, 100));
    GrindingSplit g = grind(split).asFound();
    assertThat(g.machine().contains(new Vec(5_500, 2_000))).isTrue();
    assertThat(g.machine().contains(new Vec(5_500, -1_500))).isFalse();
  }

  private static FloorTakeoff grind(FloorArea area) {
    return FloorTakeoff.of(area.withMachines(List.of(MACHINE)), 0.1, () -> false);
  }

  /** What a disc of radius 500 leaves in a corner: r² (cot a/2 − (π − a)/2). */
  private static HandWorkKind leftIn(double degrees) {
    double a = Math.toRadians(degrees);
    double left = 500 * 500 * (1 / Math.tan(a / 2) - (Math.PI - a) / 2);
    Region piece = Region.rectangle(new Bounds(0, 0, 1_000, left / 1_000));
    Map<HandWorkKind, Region> found = Map.of(HandWorkKind.POCKET, piece);
    return HandWorkPiece.sorted(found, 500).get(0).kind();
  }

  @Test
  void what_a_machine_leaves_in_60_degrees_or_more_is_a_corner_and_in_less_a_pocket() {
    assertThat(leftIn(60.5)).isEqualTo(HandWorkKind.CORNER);
    assertThat(leftIn(59.5)).isEqualTo(HandWorkKind.POCKET);
  }

  @Test
  void a_machine_of_which_nobody_said_more_keeps_12_mm_at_each_side_of_a_door() {
    assertThat(MACHINE.passing().mm()).isEqualTo(12);
    assertThat(MACHINE.passage()).isEqualTo(800 + 2 * 12);
  }
}
