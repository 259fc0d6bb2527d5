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
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import slabwright.floor.FloorTakeoff;
import slabwright.shape.Affine;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.site.MarkKind;
import slabwright.units.Length;

class PassageFinderTest {
  private static List<MachinePassage> gaps(FloorTakeoff t) {
    return ReachAnalysis.of(t).passages().stream()
        .filter(p -> p.kind() == MachinePassage.Kind.GAP)
        .toList();
  }

  /** Two rooms turned by any angle, a wall of any thickness with an opening between them. */
  @Property(tries = 200)
  void a_gap_between_two_rooms_fits_exactly_when_the_machine_gets_to_the_far_room(
      @ForAll long seed) {
    Random random = new Random(seed);
    double width = 600 + 500 * random.nextDouble();
    double thick = random.nextBoolean() ? 20 : 20 + 1_500 * random.nextDouble();
    double y = 300 + 2_000 * random.nextDouble();
    double far = 4_000 + thick;
    Affine turn = Affine.turn(2 * Math.PI * random.nextDouble());
    double[] xy = {
      0,
      0,
      4_000,
      0,
      4_000,
      y,
      far,
      y,
      far,
      0,
      far + 4_000,
      0,
      far + 4_000,
      4_000,
      far,
      4_000,
      far,
      y + width,
      4_000,
      y + width,
      4_000,
      4_000,
      0,
      4_000
    };
    for (int i = 0; i < xy.length; i += 2) {
      Vec v = turn.apply(new Vec(xy[i], xy[i + 1]));
      xy[i] = v.x();
      xy[i + 1] = v.y();
    }
    Machine machine = machine(500 + 400 * random.nextDouble(), 450, 60 * random.nextDouble());
    FloorArea area = withDoor(walled(xy), 11, 500, 1_500).withMachines(List.of(machine));
    FloorTakeoff t = FloorTakeoff.of(area);
    List<MachinePassage> gaps = gaps(t);
    if (width < 1.5 * machine.passage() - 1) {
      assertThat(gaps).hasSize(1);
      assertThat(gaps.get(0).width()).isCloseTo(width, within(0.5));
      assertThat(gaps.get(0).spare()).isCloseTo(width - machine.passage(), within(0.5));
    } else {
      assertThat(gaps).allSatisfy(p -> assertThat(p.fits()).isTrue());
    }
    double spare = width - machine.passage();
    if (Math.abs(spare) > 1) {
      Vec middle = turn.apply(new Vec(far + 2_000, 2_000));
      assertThat(t.levelled().machine().contains(middle)).isEqualTo(spare > 0);
    }
  }

  @Example
  void what_stands_beside_a_wall_leaves_a_gap_even_where_another_way_leads_round() {
    FloorArea hall =
        with(
                withDoor(rectangle(8_000, 6_000), 0, 1_000, 1_200),
                box("b", new MarkKind.Booth(), 3_000, 700, 5_000, 2_000))
            .withMachines(List.of(machine(740, 700, 50)));
    List<MachinePassage> gaps = gaps(FloorTakeoff.of(hall));
    assertThat(gaps).hasSize(1);
    assertThat(gaps.get(0).width()).isCloseTo(700, within(0.01));
    assertThat(gaps.get(0).where()).isEqualTo(new Vec(4_000, 350));
    assertThat(gaps.get(0).spare()).isCloseTo(700 - 764, within(0.01));
    assertThat(gaps.get(0).fits()).isFalse();
  }

  @Example
  void a_shallow_recess_and_the_corners_of_a_room_are_no_gaps() {
    FloorArea room =
        walled(
            0, 0, 5_000, 0, 5_000, 4_000, 3_000, 4_000, 3_000, 4_200, 2_300, 4_200, 2_300, 4_000, 0,
            4_000);
    FloorArea area = withDoor(room, 0, 1_000, 1_000).withMachines(List.of(machine(740, 700, 50)));
    assertThat(gaps(FloorTakeoff.of(area))).isEmpty();
  }

  @Example
  void every_doorway_is_told_for_every_machine_way_in_or_not_by_its_clear_width() {
    FloorArea hall = withDoor(withDoor(rectangle(8_000, 6_000), 0, 1_000, 850), 1, 500, 2_000);
    List<Doorway> doors = new ArrayList<>(hall.doorways());
    Doorway.Passage leaf = new Doorway.Passage(Optional.empty(), Optional.of(Length.mm(810)));
    doors.set(0, doors.get(0).withPassage(leaf).withWayIn(false).withName(""));
    Machine wide = machine(800, 700, 50);
    Machine tight =
        machine(500, 450, 20)
            .withTravel(new Machine.Travel(Optional.empty(), Optional.of(Length.mm(200))));
    List<MachinePassage> all =
        ReachAnalysis.of(
                FloorTakeoff.of(hall.withDoorways(doors).withMachines(List.of(tight, wide))))
            .passages();
    assertThat(all)
        .extracting(p -> p.machine().id())
        .containsExactly("m800", "m500", "m800", "m500");
    assertThat(all)
        .extracting(MachinePassage::width)
        .containsExactly(810.0, 810.0, 2_000.0, 2_000.0);
    assertThat(all)
        .extracting(MachinePassage::spare)
        .containsExactly(-14.0, -90.0, 1_176.0, 1_100.0);
    assertThat(all).extracting(MachinePassage::fits).containsExactly(false, false, true, true);
  }

  /** A corridor 1,000 mm wide along x that turns up into another; the way in at its left end. */
  private static FloorArea bend(double arm, Machine... machines) {
    FloorArea l = walled(0, 0, arm, 0, arm, arm, arm - 1_000, arm, arm - 1_000, 1_000, 0, 1_000);
    return withDoor(l, 5, 50, 900).withMachines(List.of(machines));
  }

  private static Machine bodyOf600(double length) {
    Machine machine = machine(600, 550, 20);
    return machine.withTravel(machine.travel().withLength(Optional.of(Length.mm(length))));
  }

  /**
   * Round a right angle between corridors of width c goes a rectangle w wide of 2 (√2 c − w) at
   * most: at 45° it touches the inner corner and both outer walls. Each side keeps 12 mm.
   */
  @Example
  void a_bend_that_stops_a_long_body_says_by_how_much_and_where() {
    double longest = 2 * (Math.sqrt(2) * 1_000 - 600 - 24) - 24;
    ReachAnalysis reach = ReachAnalysis.of(FloorTakeoff.of(bend(3_600, bodyOf600(longest + 100))));
    List<MachinePassage> bends =
        reach.passages().stream().filter(p -> p.kind() == MachinePassage.Kind.BEND).toList();
    assertThat(bends).hasSize(1);
    MachinePassage bend = bends.get(0);
    assertThat(bend.spare()).isCloseTo(-100, within(6.0));
    assertThat(bend.width()).isCloseTo(1_000, within(1.0));
    assertThat(bend.across().length()).isCloseTo(1_000, within(1.0));
    assertThat(bend.where().x()).isBetween(2_600.0, 3_600.0);
    assertThat(bend.where().y()).isBetween(0.0, 2_000.0);
    assertThat(bend.fits()).isFalse();
    assertThat(reach.pockets().get(0).bend()).contains(bend);
    assertThat(reach.pockets().get(0).pass()).isEmpty();
  }

  @Example
  void a_body_that_gets_round_has_no_bend_to_tell() {
    double longest = 2 * (Math.sqrt(2) * 1_000 - 600 - 24) - 24;
    ReachAnalysis reach = ReachAnalysis.of(FloorTakeoff.of(bend(3_600, bodyOf600(longest - 20))));
    assertThat(reach.passages())
        .extracting(MachinePassage::kind)
        .doesNotContain(MachinePassage.Kind.BEND);
  }
}
