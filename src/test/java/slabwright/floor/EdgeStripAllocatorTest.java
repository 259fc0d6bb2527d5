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
import slabwright.site.Doorway;
import slabwright.site.EdgeClass;
import slabwright.site.FloorArea;
import slabwright.site.MarkKind;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;

class EdgeStripAllocatorTest {
  /** Strip (800 − 700)/2 + 50 = 100; body and clearance keep the middle 450 off. */
  private static final FloorArea ROOM =
      withDoor(rectangle(6_000, 4_000), 0, 1_000, 1_000)
          .withMachines(List.of(machine(800, 700, 50)));

  /**
   * What body and head leave in a square corner goes half to either wall: of the square of 450 the
   * head's quarter disc of 350, and less the corner beyond the body's disc.
   */
  @Test
  void a_wall_between_two_corners_has_its_strip_and_half_of_either_corner() {
    FloorTakeoff t = FloorTakeoff.of(ROOM);
    List<EdgeStrip> strips = EdgeStripAllocator.allocate(t);
    double corner = t.asFound().handArea(HandWorkKind.CORNER);
    double square = 450 * 450 - Math.PI / 4 * 350 * 350 - corner / 4;
    EdgeStrip top = strips.get(2);
    assertThat(top.length()).isCloseTo(6_000, within(0.01));
    assertThat(top.area()).isCloseTo(100 * (6_000 - 2 * 450) + square, within(400.0));
    assertThat(strips.get(1).area() - strips.get(3).area()).isCloseTo(0, within(50.0));
  }

  @Test
  void every_bit_of_strip_is_shared_out_once() {
    for (int seed = 1; seed <= 12; seed++) {
      FloorArea area = new RandomFloors(seed).area().withMachines(List.of(machine(700, 600, 30)));
      FloorTakeoff t = FloorTakeoff.of(area);
      double shared = EdgeStripAllocator.allocate(t).stream().mapToDouble(EdgeStrip::area).sum();
      assertThat(shared).isCloseTo(t.asFound().handArea(HandWorkKind.EDGE_STRIP), within(60.0));
    }
  }

  @Test
  void a_proud_trench_has_strips_along_it_and_a_levelled_one_has_none() {
    assertThat(trench(false)).hasSize(1).allMatch(s -> s.area() > 2 * 100 * 1_900);
    assertThat(trench(false).get(0).length()).isCloseTo(2 * 2_000 + 400, within(1.0));
    assertThat(trench(true)).isEmpty();
  }

  private static List<EdgeStrip> trench(boolean levelled) {
    FloorArea area =
        with(
            ROOM,
            box("t", new MarkKind.Trench(TrenchLevel.PROUD, levelled), 3_000, 2_000, 3_400, 4_000));
    return EdgeStripAllocator.allocate(FloorTakeoff.of(area)).stream()
        .filter(s -> s.along().isPresent())
        .toList();
  }

  @Test
  void a_way_in_has_no_strip_and_a_door_that_is_none_has() {
    Doorway shut = new Doorway("shut", "side", 2, Length.mm(1_000), Length.mm(900), false);
    FloorArea two = ROOM.withDoorways(List.of(ROOM.doorways().get(0), shut));
    List<EdgeStrip> doors =
        EdgeStripAllocator.allocate(FloorTakeoff.of(two)).stream()
            .filter(s -> s.edge().filter(e -> e.kind() == EdgeClass.DOORWAY).isPresent())
            .toList();
    assertThat(doors).hasSize(1);
    assertThat(doors.get(0).area()).isCloseTo(900 * 100, within(100.0));
  }
}
