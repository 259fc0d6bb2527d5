package slabwright.floor.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.floor.Floors.box;
import static slabwright.floor.Floors.machine;
import static slabwright.floor.Floors.rectangle;
import static slabwright.floor.Floors.walled;
import static slabwright.floor.Floors.with;
import static slabwright.floor.Floors.withDoor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.floor.FloorArrangement;
import slabwright.floor.FloorCorners;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.GrindingOp;
import slabwright.floor.HandWorkKind;
import slabwright.floor.HandWorkPiece;
import slabwright.floor.MachineReach;
import slabwright.floor.MachineShare;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.TrenchLevel;

class BottleneckSearchTest {
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
    HandWorkPiece pocket = t.asFound().pieces(HandWorkKind.POCKET).get(0);
    Bottleneck pass = new BottleneckSearch(t, false).findBottleneck(pocket).orElseThrow();
    assertThat(pass.width()).isCloseTo(700, within(2.0));
    assertThat(pass.where().x()).isBetween(3_900.0, 6_100.0);
    assertThat(pass.where().y()).isCloseTo(1_850, within(5.0));
  }

  @Test
  void no_way_leads_past_a_trench_from_wall_to_wall_until_it_is_levelled() {
    FloorArea cut =
        with(
                withDoor(rectangle(8_000, 4_000), 0, 1_000, 1_000),
                box("t", new MarkKind.Trench(TrenchLevel.PROUD, false), 4_000, 0, 4_400, 4_000))
            .withMachines(List.of(MACHINE));
    FloorTakeoff t = FloorTakeoff.of(cut);
    HandWorkPiece pocket = t.asFound().pieces(HandWorkKind.POCKET).get(0);
    assertThat(new BottleneckSearch(t, false).findBottleneck(pocket)).isEmpty();
  }

  @Test
  void one_gap_decides_for_every_pocket_behind_it() {
    FloorArea three =
        withDoor(
                walled(
                    0, 0, 4_000, 0, 4_000, 1_500, 5_000, 1_500, 5_000, 0, 9_000, 0, 9_000, 1_600,
                    10_000, 1_600, 10_000, 0, 14_000, 0, 14_000, 4_000, 10_000, 4_000, 10_000,
                    2_400, 9_000, 2_400, 9_000, 4_000, 5_000, 4_000, 5_000, 2_000, 4_000, 2_000,
                    4_000, 4_000, 0, 4_000),
                0,
                1_000,
                1_000)
            .withMachines(List.of(machine(800, 700, 50)));
    List<PocketAccess> pockets = ReachAnalysis.of(FloorTakeoff.of(three)).pockets();
    assertThat(pockets).hasSizeGreaterThanOrEqualTo(1);
    assertThat(pockets)
        .allSatisfy(
            p -> {
              assertThat(p.pass().orElseThrow().width()).isCloseTo(500, within(2.0));
              assertThat(p.pass().orElseThrow().where().x()).isBetween(3_900.0, 5_100.0);
              assertThat(p.body().orElseThrow()).isCloseTo(476, within(2.0));
            });
  }

  /** A hall of 60 m with two rooms of posts, one near its way in, one far; invented. */
  private static FloorArea postedHall() {
    List<Mark> posts = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      double x = 18_000 + 900 * (i % 4) + 31 * i;
      double y = 5_000 + 950 * (i / 4) - 17 * i;
      posts.add(box("p" + i, new MarkKind.Column(), x, y, x + 300, y + 280));
      posts.add(box("q" + i, new MarkKind.Column(), x + 30_000, y, x + 30_350, y + 280));
    }
    FloorArea hall = walled(0, 0, 60_000, -217, 59_800, 20_000, 31, 19_900);
    return withDoor(hall, 0, 1_000, 2_400).withMarks(posts).withMachines(List.of(MACHINE));
  }

  @Test
  void the_floor_about_a_pocket_tells_what_the_whole_floor_tells() {
    FloorTakeoff t = FloorTakeoff.of(postedHall());
    FloorArrangement plan = new FloorArrangement(t.area(), t.tolerance(), () -> false);
    MachineReach reach = new GrindingOp(plan, false, t.tolerance(), () -> false).reach();
    WholeFloor whole = new WholeFloor(reach, t.tolerance(), () -> false);
    double widest = MachineReach.half(MACHINE);
    int told = 0;
    for (HandWorkPiece pocket : t.asFound().pieces(HandWorkKind.POCKET)) {
      Vec place = pocket.place();
      Bounds box = Bounds.of(List.of(place)).grown(4 * widest);
      NearFloor near = new NearFloor(reach, t.asFound().reaches(), box, widest, t.tolerance());
      for (double half = 20; half < widest; half += 25.7) {
        Optional<Boolean> serves = near.serves(half, place);
        assertThat(serves).isIn(Optional.empty(), whole.serves(half, place));
        told += serves.isPresent() ? 1 : 0;
      }
    }
    assertThat(told).isGreaterThan(20);
  }

  @Test
  void a_way_that_runs_out_of_the_box_is_left_open() {
    FloorTakeoff t = FloorTakeoff.of(TWO_ROOMS);
    FloorArrangement plan = new FloorArrangement(t.area(), t.tolerance(), () -> false);
    MachineReach reach = new GrindingOp(plan, false, t.tolerance(), () -> false).reach();
    Vec place = t.asFound().pieces(HandWorkKind.POCKET).get(0).place();
    Bounds box = Bounds.of(List.of(place)).grown(1_000);
    NearFloor near = new NearFloor(reach, t.asFound().reaches(), box, 450, t.tolerance());
    assertThat(near.serves(300, place)).isEmpty();
  }

  @Test
  void the_curve_looks_closer_where_a_gap_shuts() {
    ReachCurve curve = ReachAnalysis.of(FloorTakeoff.of(TWO_ROOMS)).curves().get(0);
    assertThat(curve.points()).isSortedAccordingTo((a, b) -> Double.compare(a.body(), b.body()));
    assertThat(curve.drops().stream().filter(d -> d.lost() > 14e6)).hasSize(2);
    assertThat(curve.drops()).anySatisfy(d -> shuts(d, 676));
    assertThat(curve.drops()).anySatisfy(d -> shuts(d, 976));
    assertThat(curve.share(1_250.0)).isZero();
  }

  /** The corridor is 700 wide and the door 1,000; the body needs 12 at either side to roll. */
  private static void shuts(ReachCurve.Drop drop, double body) {
    assertThat(drop.from().body()).isLessThanOrEqualTo(body);
    assertThat(drop.to().body()).isGreaterThan(body - 0.1);
    assertThat(drop.lost()).isGreaterThan(14e6);
  }

  @Test
  void of_two_machines_the_smaller_grinds_what_the_larger_left() {
    Machine small = machine(500, 450, 20);
    FloorTakeoff t = FloorTakeoff.of(TWO_ROOMS.withMachines(List.of(small, MACHINE)));
    List<MachineShare> shares = t.asFound().shares();
    assertThat(shares).extracting(s -> s.machine().id()).containsExactly("m800", "m500");
    assertThat(shares.get(0).area()).isLessThan(16e6);
    assertThat(shares.get(1).area()).isGreaterThan(15e6);
    double both = shares.stream().mapToDouble(MachineShare::area).sum();
    assertThat(both).isCloseTo(t.asFound().machine().area(), within(1.0));
  }

  @Test
  void reach_falls_with_width_and_drops_where_the_corridor_ends() {
    FloorTakeoff t = FloorTakeoff.of(TWO_ROOMS);
    List<ReachPoint> curve =
        new BottleneckSearch(t, false).curve(MACHINE, List.of(400.0, 670.0, 680.0, 800.0));
    assertThat(curve).isSortedAccordingTo((a, b) -> Double.compare(b.machine(), a.machine()));
    assertThat(curve.get(1).machine() - curve.get(2).machine()).isGreaterThan(14e6);
    assertThat(curve.get(3).machine()).isCloseTo(t.asFound().machine().area(), within(100.0));
  }

  @Test
  void corners_are_told_apart_by_the_way_they_turn() {
    FloorCorners corners = FloorCorners.of(FloorTakeoff.of(TWO_ROOMS).net());
    assertThat(corners.inside()).hasSize(8);
    assertThat(corners.outside()).hasSize(4);
  }
}
