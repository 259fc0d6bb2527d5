package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.floor.Floors.walled;
import static slabwright.floor.Floors.withDoor;
import static slabwright.floor.FollowedFloors.HALF_STEP;
import static slabwright.floor.FollowedFloors.WALK_BEHIND;
import static slabwright.floor.FollowedFloors.assertFollowed;
import static slabwright.floor.FollowedFloors.assertFollowedInLots;
import static slabwright.floor.FollowedFloors.assertSame;
import static slabwright.floor.FollowedFloors.busy;
import static slabwright.floor.FollowedFloors.followed;
import static slabwright.floor.FollowedFloors.outOfSquare;
import static slabwright.floor.FollowedFloors.square;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Machine;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Spot;
import slabwright.units.Length;

/**
 * The figures that follow a hand are those of a take-off of the whole floor.
 *
 * <p>They may differ by what the grid rounds: a long slanted edge is bent by up to half a grid step
 * wherever something meets it, over all its length and so also far from the mark that was moved.
 */
class FollowedTakeoffTest {
  private final Random random = new Random(20_261_127);

  private FloorArea moved(FloorArea area, double by) {
    int i = random.nextInt(area.marks().size());
    double x = by * random.nextGaussian();
    return HallMarks.moved(area, i, x, by * random.nextGaussian());
  }

  @Test
  void a_mark_moved_on_a_square_floor_gives_the_figures_of_a_whole_takeoff() {
    assertFollowed(square(), 25, area -> moved(area, 900));
  }

  @Test
  void a_mark_moved_on_a_floor_out_of_square_gives_the_figures_of_a_whole_takeoff() {
    assertFollowed(outOfSquare(), 25, area -> moved(area, 900));
  }

  @Test
  void proud_trenches_and_a_second_machine_are_followed_too() {
    assertFollowed(busy(outOfSquare()), 8, area -> moved(area, 600));
  }

  /** What it works from changes beyond the places that it rolls to. */
  @Test
  void a_machine_that_works_closer_to_a_wall_than_it_rolls_is_followed_too() {
    Machine rolls =
        WALK_BEHIND.withTravel(Machine.Travel.UNKNOWN.withPassing(Optional.of(Length.mm(140))));
    assertFollowed(busy(outOfSquare()).withMachines(List.of(rolls)), 12, area -> moved(area, 600));
  }

  @Test
  @Tag("long")
  void five_thousand_moves_give_the_figures_of_a_whole_takeoff() {
    assertFollowedInLots(50, 100, 100, this::moved);
  }

  /** What a machine swept crossed an edge two grid steps from a corner and so moved the edge. */
  @Test
  void a_sweep_that_crosses_an_edge_hard_by_a_corner_leaves_the_edge_alone() {
    FloorArea rests = busy(outOfSquare());
    assertFollowed(rests, HallMarks.moved(rests, 3, 427.74474052866793, -62.793716186286865));
  }

  /**
   * Half a grid step by which the column bends the wall moved the place where it meets the window's
   * side, 44 times as far along the wall; that once counted as length.
   */
  @Test
  void a_wall_that_meets_a_side_of_the_window_at_a_flat_angle_keeps_its_length() {
    FloorArea rests = busy(outOfSquare());
    assertFollowed(rests, HallMarks.moved(rests, 13, 2_318.1543240792207, 2_200.287812263105));
  }

  /** Its place now lay just outside of what is noded about its place before, its box did not. */
  @Test
  void a_mark_that_comes_to_lie_just_beyond_the_window_it_left_counts_once() {
    FloorArea rests = outOfSquare();
    assertFollowed(rests, HallMarks.moved(rests, 3, 3_263.049508362318, -2_439.14642335403));
  }

  /**
   * The one wrong area of the 5,000 moves: 52 mm² off, all of it beyond the window, where a side of
   * what the machine sweeps had been turned about its far end by thinning a corner 8 m away.
   */
  @Test
  void a_corner_that_is_thinned_leaves_a_long_side_beyond_the_window_alone() {
    FloorArea rests = outOfSquare();
    Vec from = ((Form.RoundEnded) rests.marks().get(8).form()).middle().vec();
    FloorArea area = HallMarks.moved(rests, 8, 15_189.867 - from.x(), 14_489.813 - from.y());
    FloorFigures now = followed(new FollowedTakeoff(FloorTakeoff.of(rests)), area).orElseThrow();
    assertSame(now, area);
    double whole = FloorTakeoff.of(area).asFound().machine().area();
    // Half a step of the grid along that side.
    assertThat(now.machine()).isCloseTo(whole, within(HALF_STEP * 8_577));
  }

  /** Once of such a pocket only the part was lost that the move itself reached. */
  @Test
  void a_pocket_that_closes_and_reaches_farther_than_the_move_is_left_open() {
    FloorArea rests = square();
    Vec from = ((Form.Rectangle) rests.marks().get(10).form()).middle().vec();
    FloorArea area = HallMarks.moved(rests, 10, 20_970.793 - from.x(), 890.38 - from.y());
    assertThat(followed(new FollowedTakeoff(FloorTakeoff.of(rests)), area)).isEmpty();
  }

  @Test
  void marks_added_and_taken_away_are_followed_too() {
    FloorArea rests = square();
    FollowedTakeoff f = new FollowedTakeoff(FloorTakeoff.of(rests));
    FloorArea less = rests.withMarks(rests.marks().subList(0, 21));
    assertSame(followed(f, less).orElseThrow(), less);
    List<Mark> more = new ArrayList<>(rests.marks());
    Form form = new Form.Circle(Spot.mm(15_000, 6_000), Length.mm(333));
    more.add(Mark.of("new", "", new MarkKind.Column(), form));
    assertSame(followed(f, rests.withMarks(more)).orElseThrow(), rests.withMarks(more));
  }

  /** Two rooms with one gap between them; only the first has a way in. */
  private static FloorArea twoRooms(double gapAt) {
    Mark wall = Floors.box("wall", new MarkKind.Island(), 11_900, 0, 12_000, 8_000 - 1_000);
    Mark post = Floors.box("post", new MarkKind.Island(), 11_900, gapAt, 12_000, gapAt + 100);
    return withDoor(walled(0, 0, 24_000, 0, 24_000, 8_000, 0, 8_000), 0, 2_000, 2_000)
        .withMarks(List.of(wall, post))
        .withMachines(List.of(WALK_BEHIND));
  }

  @Test
  void a_gap_that_closes_is_left_open_to_a_look_at_the_whole() {
    FloorArea open = twoRooms(7_900);
    FloorArea shut = twoRooms(7_500);
    FloorTakeoff through = FloorTakeoff.of(open);
    FloorTakeoff stopped = FloorTakeoff.of(shut);
    assertThat(stopped.asFound().machine().area())
        .isLessThan(0.6 * through.asFound().machine().area());
    assertThat(followed(new FollowedTakeoff(through), shut)).isEmpty();
    assertThat(followed(new FollowedTakeoff(stopped), open)).isEmpty();
  }

  @Test
  void a_machine_that_must_turn_is_left_open() {
    FloorArea rests = twoRooms(7_900);
    Machine m = rests.machines().get(0);
    Machine turns = m.withTravel(m.travel().withLength(Optional.of(Length.mm(1_400))));
    FloorArea turning = rests.withMachines(List.of(turns));
    FollowedTakeoff t = new FollowedTakeoff(FloorTakeoff.of(turning));
    assertThat(followed(t, turning.withMarks(twoRooms(7_800).marks()))).isEmpty();
  }

  @Test
  void marks_that_change_places_in_their_order_are_left_open() {
    FloorArea rests = square();
    List<Mark> marks = new ArrayList<>(rests.marks());
    Collections.swap(marks, 3, 9);
    FollowedTakeoff f = new FollowedTakeoff(FloorTakeoff.of(rests));
    assertThat(followed(f, rests.withMarks(marks))).isEmpty();
    assertThat(followed(f, rests)).isEqualTo(Optional.of(FloorFigures.of(f.base())));
  }

  @Test
  void a_floor_without_a_machine_is_followed_as_hand_work() {
    FloorArea rests = square().withMachines(List.of());
    assertFollowed(rests, moved(rests, 700));
  }
}
