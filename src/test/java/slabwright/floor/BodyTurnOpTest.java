package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.floor.Floors.walled;
import static slabwright.floor.Floors.withDoor;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import slabwright.floor.reach.MachinePassage;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.units.Length;

/** Long bodies round bends, against closed forms and against a raster of positions and headings. */
class BodyTurnOpTest {
  /** A corridor along x, {@code a} wide, that turns up into one along y, {@code b} wide. */
  private static Region corner(double a, double b) {
    double far = 6_000;
    return Region.of(Ring.of(0, 0, far, 0, far, far, far - b, far, far - b, a, 0, a));
  }

  private static BodyTurnOp.Reached turn(Region room, Region start, double w, double l) {
    Region rolls = room.offset(MachineReach.FIT - w / 2, 0.1).partsWhere(p -> p.meets(start));
    return new BodyTurnOp(room, rolls, List.of(start), () -> false).of(w, l);
  }

  private static boolean getsRound(double a, double b, double w, double l) {
    Region start = Region.rectangle(new Bounds(0, 0, 2_000, a));
    return turn(corner(a, b), start, w, l).middle().contains(new Vec(6_000 - b / 2, 5_000));
  }

  /**
   * The longest rectangle round a corner: it touches the inner corner and both outer walls, least
   * over all headings; without width the published bound of the ladder.
   */
  private static double longest(double a, double b, double w) {
    double least = Double.POSITIVE_INFINITY;
    for (double t = 0.0005; t < Math.PI / 2; t += 0.0005) {
      double l = a / Math.sin(t) + b / Math.cos(t) - 2 * w / Math.sin(2 * t);
      least = Math.min(least, l);
    }
    return least;
  }

  @Example
  void a_ladder_gets_round_a_corner_up_to_the_published_length() {
    double bound = Math.pow(Math.cbrt(900.0 * 900) + Math.cbrt(1_200.0 * 1_200), 1.5);
    assertThat(longest(900, 1_200, 0)).isCloseTo(bound, within(0.1));
    assertThat(getsRound(900, 1_200, 1, bound - 12)).isTrue();
    assertThat(getsRound(900, 1_200, 1, bound + 12)).isFalse();
  }

  @Property(tries = 100)
  void a_rectangle_gets_round_a_corner_exactly_up_to_the_closed_form(@ForAll long seed) {
    Random random = new Random(seed);
    double a = 700 + 900 * random.nextDouble();
    double b = 700 + 900 * random.nextDouble();
    double w = 0.3 * a + 0.6 * (Math.min(a, b) - 0.3 * a) * random.nextDouble();
    double bound = longest(a, b, w);
    if (bound > w + 20) {
      assertThat(getsRound(a, b, w, bound - 6)).as("shorter").isTrue();
      assertThat(getsRound(a, b, w, bound + 6)).as("longer").isFalse();
    }
  }

  @Example
  void a_machine_of_29_by_60_in_is_stuck_in_a_corridor_of_850_mm_that_turns() {
    FloorArea hall =
        withDoor(
            walled(
                0, 0, 4_000, 0, 4_000, 2_000, 9_000, 2_000, 9_000, 8_000, 4_000, 8_000, 4_000,
                7_000, 8_150, 7_000, 8_150, 2_850, 4_000, 2_850, 4_000, 4_000, 0, 4_000),
            0,
            1_000,
            1_200);
    Machine disc = new Machine("g", "", Length.inches(29), Length.inches(27), Length.inches(1));
    Machine real = disc.withTravel(disc.travel().withLength(Optional.of(Length.inches(60))));
    FloorTakeoff quick = FloorTakeoff.of(hall.withMachines(List.of(disc)));
    FloorTakeoff t = FloorTakeoff.of(hall.withMachines(List.of(real)));
    assertThat(quick.asFound().machine().contains(new Vec(6_000, 7_500))).isTrue();
    assertThat(t.asFound().machine().contains(new Vec(6_000, 7_500))).isFalse();
    assertThat(t.asFound().machine().contains(new Vec(7_000, 2_425))).isTrue();
    ReachAnalysis ways = ReachAnalysis.of(t);
    List<MachinePassage> bends =
        ways.passages().stream().filter(p -> p.kind() == MachinePassage.Kind.BEND).toList();
    assertThat(bends).hasSize(1);
    assertThat(bends.get(0).fits()).isFalse();
    assertThat(bends.get(0).where().x()).isBetween(8_150.0, 9_000.0);
    assertThat(bends.get(0).where().y()).isBetween(2_000.0, 3_800.0);
    assertThat(bends.get(0).width()).isCloseTo(850, within(5.0));
    double bound = 2 * (Math.sqrt(2) * 850 - 29 * 25.4 - 24) - 24;
    assertThat(bends.get(0).spare()).isCloseTo(bound - 60 * 25.4, within(6.0));
    assertThat(ways.pockets().get(0).bend()).contains(bends.get(0));
    assertThat(ways.pockets().get(0).pass()).isEmpty();
  }

  @Example
  void a_corridor_just_as_wide_as_the_machine_is_driven_straight_through_and_no_bend_is_hidden() {
    Region room =
        Region.of(
            Ring.of(
                0, 0, 3_000, 0, 3_000, 1_000, 7_000, 1_000, 7_000, 4_000, 6_200, 4_000, 6_200,
                1_800, 3_000, 1_800, 3_000, 3_000, 0, 3_000));
    BodyTurnOp.Reached r = turn(room, Region.rectangle(new Bounds(0, 0, 1_000, 3_000)), 800, 1_500);
    assertThat(r.middle().contains(new Vec(6_000, 1_400))).isTrue();
    assertThat(r.middle().contains(new Vec(6_600, 3_000))).isFalse();
    assertThat(r.lost()).isNotEmpty();
  }

  @Property(tries = 20)
  void what_is_reached_lies_between_two_floods_of_a_raster_of_headings(@ForAll long seed) {
    isBetweenFloods(seed);
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void what_is_reached_lies_between_two_floods_of_a_raster_of_headings_of_200(@ForAll long seed) {
    what_is_reached_lies_between_two_floods_of_a_raster_of_headings(seed);
  }

  @Property(tries = 1_000)
  @Tag("long")
  void over_1000_floors_what_is_reached_lies_between_two_floods(@ForAll long seed) {
    isBetweenFloods(seed);
  }

  private static void isBetweenFloods(long seed) {
    Random random = new Random(seed);
    Region room = corridors(random);
    double w = 450 + 300 * random.nextDouble();
    double l = w + 100 + 900 * random.nextDouble();
    Region start = Region.rectangle(new Bounds(100, 100, 1_300, 1_300));
    Region middle = turn(room, start, w, l).middle();
    HeadingRaster raster = new HeadingRaster(room, start);
    boolean[] surely = raster.reached(w, l, HeadingRaster.ERROR);
    double[] perhaps = raster.distanceTo(raster.reached(w, l, -1.5 * HeadingRaster.ERROR));
    boolean[] exact = raster.fill(middle);
    for (int i = 0; i < exact.length; i++) {
      if (surely[i]) {
        assertThat(exact[i]).as("must be reached: %s", raster.middle(i)).isTrue();
      }
      if (exact[i]) {
        assertThat(perhaps[i])
            .as("must not be reached: %s", raster.middle(i))
            .isLessThan(3 * HeadingRaster.CELL);
      }
    }
  }

  /** A small room and three lengths of corridor at right angles, with something in the way. */
  private static Region corridors(Random random) {
    double a = 800 + 700 * random.nextDouble();
    double b = 800 + 700 * random.nextDouble();
    double c = 800 + 700 * random.nextDouble();
    double x = 1_900 + 1_200 * random.nextDouble();
    double y = 1_600 + 1_500 * random.nextDouble();
    double back = random.nextBoolean() ? 2_000 : -1_700;
    Region all =
        Region.union(
            List.of(
                Region.rectangle(new Bounds(0, 0, 1_400, 1_400)),
                Region.rectangle(new Bounds(0, 0, x + b, a)),
                Region.rectangle(new Bounds(x, 0, x + b, y + c)),
                Region.rectangle(
                    new Bounds(Math.min(x, x + back), y, Math.max(x + b, x + b + back), y + c))));
    double px = x + 600 * (random.nextDouble() - 0.5);
    double py = 700 + 900 * random.nextDouble();
    Region post = Region.rectangle(new Bounds(px, py, px + 150, py + 150));
    return random.nextBoolean() ? all : all.minus(post);
  }
}
