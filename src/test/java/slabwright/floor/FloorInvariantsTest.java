package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import slabwright.shape.Region;
import slabwright.site.FloorArea;

/** What must hold of every floor whatever marks overlap. */
class FloorInvariantsTest {
  private static final double TOLERANCE = 1;

  @Property(tries = 15)
  void zones_are_disjoint_and_sum_to_the_net_floor(@ForAll long seed) {
    FloorTakeoff t = takeoff(new RandomFloors(seed).area());
    double zones = t.zones().stream().mapToDouble(Zone::area).sum();
    double standing = t.standing().stream().mapToDouble(Obstacle::area).sum();
    assertThat(zones).isCloseTo(t.net().area(), within(1e-9 * t.net().area()));
    assertThat(zones + standing).isCloseTo(t.gross().area(), within(1e-9 * t.gross().area()));
    Region union = Region.union(t.zones().stream().map(Zone::region).toList());
    assertThat(union.area()).isCloseTo(zones, within(1e-6 * zones));
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void zones_are_disjoint_and_sum_to_the_net_floor_of_200(@ForAll long seed) {
    zones_are_disjoint_and_sum_to_the_net_floor(seed);
  }

  @Property(tries = 15)
  void edges_sum_to_the_boundary_of_the_free_floor(@ForAll long seed) {
    FloorTakeoff t = takeoff(new RandomFloors(seed).area());
    assertThat(t.edgeLength()).isCloseTo(t.net().boundaryLength(), within(1e-6));
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void edges_sum_to_the_boundary_of_the_free_floor_of_200(@ForAll long seed) {
    edges_sum_to_the_boundary_of_the_free_floor(seed);
  }

  @Example
  void a_corner_a_grid_step_beside_a_short_piece_keeps_its_length() {
    FloorTakeoff t = takeoff(new RandomFloors(25213543099907L).area());
    assertThat(t.edgeLength()).isCloseTo(t.net().boundaryLength(), within(1e-6));
  }

  @Property(tries = 15)
  void machine_and_hand_are_the_floor_to_be_ground(@ForAll long seed) {
    RandomFloors random = new RandomFloors(seed);
    double body = random.between(400, 900);
    FloorTakeoff t =
        takeoff(random.area().withMachines(List.of(Floors.machine(body, body - 60, 20))));
    for (GrindingSplit g : List.of(t.asFound(), t.levelled())) {
      double sum = g.machine().area() + g.hand().area();
      assertThat(sum).isCloseTo(t.ground().area(), within(1e-9 * t.ground().area()));
      assertThat(g.pieces().stream().mapToDouble(HandWorkPiece::area).sum())
          .isCloseTo(g.hand().area(), within(50.0));
    }
    assertThat(t.levelled().machine().area())
        .isGreaterThanOrEqualTo(t.asFound().machine().area() - slack(t));
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void machine_and_hand_are_the_floor_to_be_ground_of_200(@ForAll long seed) {
    machine_and_hand_are_the_floor_to_be_ground(seed);
  }

  @Property(tries = 10)
  void a_wider_machine_reaches_no_more(@ForAll long seed) {
    RandomFloors random = new RandomFloors(seed);
    FloorArea area = random.area();
    double body = random.between(400, 800);
    double wider = body + random.between(0, 400);
    FloorTakeoff narrow = takeoff(area.withMachines(List.of(Floors.machine(body, 350, 20))));
    FloorTakeoff wide = takeoff(area.withMachines(List.of(Floors.machine(wider, 350, 20))));
    assertThat(wide.asFound().machine().minus(narrow.asFound().machine()).area())
        .isLessThanOrEqualTo(slack(narrow));
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void a_wider_machine_reaches_no_more_of_200(@ForAll long seed) {
    a_wider_machine_reaches_no_more(seed);
  }

  @Property(tries = 8)
  void a_second_machine_only_adds(@ForAll long seed) {
    RandomFloors random = new RandomFloors(seed);
    FloorArea area = random.area();
    var large = Floors.machine(800, 740, 20);
    var small = Floors.machine(420, 380, 20);
    FloorTakeoff both = takeoff(area.withMachines(List.of(small, large)));
    FloorTakeoff one = takeoff(area.withMachines(List.of(large)));
    assertThat(both.asFound().reaches().get(0).machine()).isEqualTo(large);
    assertThat(both.asFound().machine().area())
        .isGreaterThanOrEqualTo(one.asFound().machine().area() - 1);
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void a_second_machine_only_adds_of_200(@ForAll long seed) {
    a_second_machine_only_adds(seed);
  }

  private static double slack(FloorTakeoff t) {
    return TOLERANCE * (t.net().boundaryLength() + 10_000);
  }

  private static FloorTakeoff takeoff(FloorArea area) {
    return FloorTakeoff.of(area, TOLERANCE, () -> false);
  }
}
