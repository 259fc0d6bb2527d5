package slabwright.floor.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.floor.Floors.box;
import static slabwright.floor.Floors.machine;
import static slabwright.floor.Floors.walled;
import static slabwright.floor.Floors.withDoor;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.floor.FloorArrangement;
import slabwright.floor.GrindingOp;
import slabwright.floor.MachineReach;
import slabwright.floor.ReachedFloor;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.MarkKind;

/** Two rooms of 4 m, a door of 1 m into the left one and a corridor of 700 mm between them. */
class NearFloorTest {
  private static final double TOLERANCE = 0.5;
  private static final double WIDEST = 450;

  private static final FloorArea TWO_ROOMS =
      withDoor(
          walled(
              0, 0, 4_000, 0, 4_000, 1_500, 6_000, 1_500, 6_000, 0, 10_000, 0, 10_000, 4_000, 6_000,
              4_000, 6_000, 2_200, 4_000, 2_200, 4_000, 4_000, 0, 4_000),
          0,
          1_000,
          1_000);

  private static final Vec LEFT = new Vec(2_000, 3_000);
  private static final Vec RIGHT = new Vec(8_000, 1_850);
  private static final Bounds ALL = new Bounds(-3_000, -3_000, 13_000, 7_000);

  private static MachineReach reach(FloorArea area) {
    FloorArrangement plan = new FloorArrangement(area, TOLERANCE, () -> false);
    return new GrindingOp(plan, false, TOLERANCE, () -> false).reach();
  }

  private static NearFloor near(FloorArea area, Bounds box, ReachedFloor... reached) {
    return new NearFloor(reach(area), List.of(reached), box, WIDEST, TOLERANCE);
  }

  private static Bounds around(Vec place, double out) {
    return Bounds.of(List.of(place)).grown(out);
  }

  /** A machine of 800 mm, 824 with what it keeps at both sides, that rolls in all of a box. */
  private static ReachedFloor rolling(Bounds where) {
    Region rolls = Region.rectangle(where);
    return new ReachedFloor(machine(800, 700, 50), rolls, rolls, rolls, List.of());
  }

  @Test
  void in_a_box_round_the_whole_floor_the_door_tells_who_gets_where() {
    NearFloor near = near(TWO_ROOMS, ALL);
    assertThat(near.serves(349, RIGHT)).hasValue(true);
    assertThat(near.serves(351, RIGHT)).hasValue(false);
    assertThat(near.serves(499, LEFT)).hasValue(true);
    assertThat(near.serves(501, LEFT)).hasValue(false);
  }

  @Test
  void a_body_that_cannot_leave_the_far_room_is_told_from_a_box_about_that_room() {
    NearFloor near = near(TWO_ROOMS, around(RIGHT, 2_900));
    assertThat(near.serves(351, RIGHT)).hasValue(false);
    assertThat(near.serves(349, RIGHT)).isEmpty();
  }

  @Test
  void a_body_as_wide_as_a_machine_that_rolls_here_gets_here_and_of_a_wider_one_nothing_is_known() {
    Bounds box = around(LEFT, 900);
    NearFloor near = near(TWO_ROOMS, box, rolling(new Bounds(500, 500, 3_500, 3_500)));
    assertThat(near.serves(412, LEFT)).hasValue(true);
    assertThat(near.serves(300, LEFT)).hasValue(true);
    assertThat(near.serves(412.1, LEFT)).isEmpty();
    assertThat(near(TWO_ROOMS, box).serves(300, LEFT)).isEmpty();
  }

  /** A blind lane of 1 m that leaves the box at one side, four times. */
  @Test
  void a_way_may_leave_the_box_at_any_of_its_sides() {
    double[][] lanes = {
      {-9_000, -500, 1_000, -500, 1_000, 500, -9_000, 500},
      {-1_000, -500, 9_000, -500, 9_000, 500, -1_000, 500},
      {-500, -9_000, 500, -9_000, 500, 1_000, -500, 1_000},
      {-500, -1_000, 500, -1_000, 500, 9_000, -500, 9_000}
    };
    for (double[] lane : lanes) {
      NearFloor near = near(walled(lane), around(Vec.ZERO, 2_000));
      assertThat(near.serves(300, Vec.ZERO)).isEmpty();
      assertThat(near.serves(300, new Vec(5_000, 5_000))).hasValue(false);
    }
  }

  /** A post that leaves 650 mm at its one side and two metres at the other. */
  private static FloorArea withPost() {
    return TWO_ROOMS.withMarks(List.of(box("p", new MarkKind.Column(), 7_400, 650, 7_700, 1_400)));
  }

  @Test
  void the_neck_is_the_narrow_place_without_which_there_is_no_way_and_not_the_nearest_one() {
    Vec neck = near(withPost(), ALL).neck(300, 380, RIGHT).orElseThrow();
    assertThat(neck.x()).isBetween(4_000.0, 6_000.0);
    assertThat(neck.y()).isCloseTo(1_850, within(60.0));
  }

  @Test
  void a_neck_that_may_lie_beyond_the_box_is_left_open() {
    assertThat(near(withPost(), around(RIGHT, 2_500)).neck(300, 380, RIGHT)).isEmpty();
    Bounds left = around(LEFT, 900);
    assertThat(near(TWO_ROOMS, left).neck(300, 380, LEFT)).isEmpty();
  }

  /** Nothing is narrow about the place: it is as deep as the body gets that decides. */
  @Test
  void without_a_narrow_place_it_is_where_the_body_comes_nearest_to_a_wall() {
    Vec corner = new Vec(150, 3_000);
    NearFloor all = near(TWO_ROOMS, ALL);
    assertThat(all.neck(300, 301, corner).orElseThrow().x()).isCloseTo(300, within(0.1));
    Bounds box = new Bounds(-500, 2_000, 2_000, 3_200);
    NearFloor near = near(TWO_ROOMS, box, rolling(new Bounds(0, 0, 4_000, 4_000)));
    Vec place = new Vec(1_000, 3_150);
    assertThat(near.neck(300, 301, place)).as("the box's own side is no wall").isEmpty();
  }

  @Test
  void what_is_nearest_is_told_unless_something_nearer_may_lie_beyond_what_was_looked_at() {
    NearFloor near = near(TWO_ROOMS, around(LEFT, 100));
    Vec wall = near.nearestObstacle(LEFT).orElseThrow();
    assertThat(wall.distanceTo(new Vec(2_000, 4_000))).isLessThan(1e-6);
    FloorArea hall = walled(0, 0, 20_000, 0, 20_000, 20_000, 0, 20_000);
    Vec middle = new Vec(10_000, 10_000);
    assertThat(near(hall, around(middle, 100)).nearestObstacle(middle)).isEmpty();
    Vec aside = new Vec(5_000, 300);
    assertThat(near(hall, around(middle, 100)).nearestObstacle(aside)).isEqualTo(Optional.empty());
  }

  /** The window reaches 1,460 mm from the middle; each place is 60 mm from another side of it. */
  @Test
  void beside_any_side_of_what_was_looked_at_something_nearer_may_lie_beyond_it() {
    FloorArea hall =
        walled(0, 0, 20_000, 0, 20_000, 20_000, 0, 20_000)
            .withMarks(
                List.of(
                    box("w", new MarkKind.Column(), 8_600, 10_900, 8_700, 11_000),
                    box("e", new MarkKind.Column(), 11_300, 10_900, 11_400, 11_000),
                    box("s", new MarkKind.Column(), 10_900, 8_600, 11_000, 8_700),
                    box("n", new MarkKind.Column(), 9_000, 11_300, 9_100, 11_400)));
    NearFloor near = near(hall, around(new Vec(10_000, 10_000), 100));
    for (Vec where :
        List.of(
            new Vec(8_600, 10_000),
            new Vec(11_400, 10_000),
            new Vec(10_000, 8_600),
            new Vec(10_000, 11_400))) {
      assertThat(near.nearestObstacle(where)).as("from %s", where).isEmpty();
    }
    assertThat(near.nearestObstacle(new Vec(9_300, 10_600))).isPresent();
  }
}
