package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.floor.Floors.walled;
import static slabwright.floor.Floors.withDoor;
import static slabwright.floor.FollowedFloors.WALK_BEHIND;
import static slabwright.floor.FollowedFloors.assertFollowed;
import static slabwright.floor.FollowedFloors.assertFollowedInLots;
import static slabwright.floor.FollowedFloors.assertSame;
import static slabwright.floor.FollowedFloors.busy;
import static slabwright.floor.FollowedFloors.followed;
import static slabwright.floor.FollowedFloors.outOfSquare;
import static slabwright.floor.FollowedFloors.square;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.OutlinePiece;
import slabwright.site.PieceKind;
import slabwright.site.Spot;
import slabwright.site.edit.OutlineEdit;
import slabwright.store.PlanFile;
import slabwright.units.Length;

/** The figures that follow a corner or a wall of the outline are those of a whole take-off. */
class FollowedOutlineTest {
  private final Random random = new Random(20_261_128);

  private static FloorArea depot() {
    return PlanFile.read(Path.of("sample-plans/depot-floor.site.json")).orThrow().areas().get(0);
  }

  /** Moved as a hand does it, so that marks measured from a wall go with it. */
  private static FloorArea withCorner(FloorArea area, int corner, double x, double y) {
    Vec at = area.outline().get(corner).from().vec();
    Spot to = Spot.mm(at.x() + x, at.y() + y);
    return new OutlineEdit.MoveCorner(area.id(), corner, to).change(area).orElseThrow();
  }

  private static FloorArea withWall(FloorArea area, int piece, double out) {
    int next = (piece + 1) % area.outline().size();
    Vec along = area.outline().get(next).from().vec().minus(area.outline().get(piece).from().vec());
    Vec by = along.left().unit().times(-out);
    return withCorner(withCorner(area, piece, by.x(), by.y()), next, by.x(), by.y());
  }

  private FloorArea moved(FloorArea area, double by) {
    int i = random.nextInt(area.outline().size());
    return random.nextBoolean()
        ? withCorner(area, i, by * random.nextGaussian(), by * random.nextGaussian())
        : withWall(area, i, by * random.nextGaussian());
  }

  @Test
  void corners_and_walls_of_a_square_floor_give_the_figures_of_a_whole_takeoff() {
    assertFollowed(square(), 25, area -> moved(area, 300));
  }

  @Test
  void corners_and_walls_of_a_floor_out_of_square_give_the_figures_of_a_whole_takeoff() {
    assertFollowed(outOfSquare(), 25, area -> moved(area, 300));
  }

  @Test
  void proud_trenches_and_a_second_machine_are_followed_too() {
    assertFollowed(busy(outOfSquare()), 10, area -> moved(area, 200));
  }

  @Test
  @Tag("long")
  void two_thousand_moves_of_corners_and_walls_give_the_figures_of_a_whole_takeoff() {
    assertFollowedInLots(40, 50, 20, this::moved);
  }

  @Test
  @Tag("long")
  void a_hundred_moves_of_the_depots_outline_give_the_figures_of_a_whole_takeoff() {
    assertFollowed(depot(), 50, area -> moved(area, 400));
    assertFollowed(withCorner(depot(), 2, -340, -217), 50, area -> moved(area, 400));
  }

  /** All gates stand in one wall, and one way between two of them closes; there is one round. */
  @Test
  void a_way_along_a_wall_that_closes_is_known_where_there_is_another_round_it() {
    FloorArea rests = depot();
    assertFollowed(rests, withCorner(rests, 5, 191, 59));
  }

  @Test
  void a_bulging_wall_and_a_corner_far_askew_are_followed() {
    FloorArea rests = square();
    List<OutlinePiece> outline = new ArrayList<>(rests.outline());
    outline.set(1, new OutlinePiece(outline.get(1).from(), PieceKind.KERB, Length.mm(700)));
    FloorArea bulging = rests.withOutline(outline);
    FollowedTakeoff f = new FollowedTakeoff(FloorTakeoff.of(bulging));
    for (FloorArea area :
        List.of(withCorner(bulging, 2, 317, -2_411), withCorner(bulging, 1, -190, 83), rests)) {
      assertSame(followed(f, area).orElseThrow(), area);
    }
  }

  @Test
  void a_wall_made_an_open_edge_is_followed() {
    FloorArea rests = outOfSquare();
    FloorArea open =
        new OutlineEdit.SetPiece(rests.id(), 2, PieceKind.OPEN_EDGE, Length.ZERO)
            .change(rests)
            .orElseThrow();
    assertFollowed(rests, open);
  }

  /** Two rooms; beside the wall between them one meter is open at the far wall. */
  private static FloorArea twoRooms() {
    Mark wall = Floors.box("wall", new MarkKind.Island(), 11_900, 0, 12_000, 7_000);
    return withDoor(walled(0, 0, 24_000, 0, 24_000, 8_000, 0, 8_000), 0, 2_000, 2_000)
        .withMarks(List.of(wall))
        .withMachines(List.of(WALK_BEHIND));
  }

  @Test
  void a_wall_that_closes_the_only_way_is_left_open_to_a_look_at_the_whole() {
    FloorArea open = twoRooms();
    FloorArea shut = withWall(open, 2, -400);
    FloorArea still = withWall(open, 2, -40);
    FloorTakeoff through = FloorTakeoff.of(open);
    FloorTakeoff stopped = FloorTakeoff.of(shut);
    assertThat(stopped.asFound().machine().area())
        .isLessThan(0.6 * through.asFound().machine().area());
    assertThat(followed(new FollowedTakeoff(through), shut)).isEmpty();
    assertThat(followed(new FollowedTakeoff(stopped), open)).isEmpty();
    assertFollowed(open, still);
  }

  /** The only doorway moves with its wall to where something stands before it. */
  @Test
  void a_wall_that_takes_its_only_way_in_behind_something_is_left_open() {
    Mark before = Floors.box("before", new MarkKind.Booth(), 4_200, 100, 6_400, 700);
    FloorArea rests = twoRooms().withMarks(List.of(before));
    FloorArea behind = withCorner(rests, 0, 2_200, 0);
    FloorTakeoff reached = FloorTakeoff.of(rests);
    // What is left is the doorway itself.
    assertThat(FloorTakeoff.of(behind).asFound().machine().area())
        .isLessThan(0.001 * reached.asFound().machine().area());
    assertThat(followed(new FollowedTakeoff(reached), behind)).isEmpty();
  }

  @Test
  void a_corner_added_is_left_open() {
    FloorArea rests = twoRooms();
    FloorArea more =
        new OutlineEdit.AddCorner(rests.id(), 1, Spot.mm(24_100, 3_000))
            .change(rests)
            .orElseThrow();
    assertThat(followed(new FollowedTakeoff(FloorTakeoff.of(rests)), more)).isEmpty();
  }
}
