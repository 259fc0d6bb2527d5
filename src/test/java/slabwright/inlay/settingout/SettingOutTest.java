package slabwright.inlay.settingout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import slabwright.inlay.Graphics;
import slabwright.inlay.Placement;
import slabwright.inlay.panel.PanelParameters;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.SeamPlanner;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.OutlinePiece;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.UnitSystem;

class SettingOutTest {
  private static final List<OutlinePiece> ROOM =
      List.of(
          OutlinePiece.wall(Spot.mm(0, 0)),
          OutlinePiece.wall(Spot.mm(10_000, 0)),
          OutlinePiece.wall(Spot.mm(10_000, 8000)),
          OutlinePiece.wall(Spot.mm(0, 8000)));
  private static final Region FLOOR = box(0, 0, 10_000, 8000);
  private static final Doorway FRONT =
      new Doorway("d", "front door", 0, Length.mm(4000), Length.mm(1000), true);
  private static final Doorway SIDE =
      new Doorway("s", "side door", 1, Length.mm(2500), Length.mm(1000), false);
  private static final StencilSet SET = Graphics.one(box(0, 0, 1800, 1800));
  private static final PanelPlan PLAN = new SeamPlanner(SET, PanelParameters.usual()).best();

  private static SettingOut of(Vec middle, double turn, Region free, Doorway... doors) {
    return of(middle, turn, new SettingOutFloor(free, ROOM, List.of(doors), UnitSystem.METRIC));
  }

  private static SettingOut of(Vec middle, double turn, SettingOutFloor floor) {
    Affine toSite = new Placement(middle, turn).toSite(SET.blank());
    return SettingOut.of(PLAN, middle, toSite, floor, SettingOutParameters.usual());
  }

  @Test
  void from_the_middle_of_the_doorway_square_in_and_then_aside_one_comes_to_the_middle() {
    SnappedLines lines = of(new Vec(6200, 3100), 0, FLOOR, FRONT).lines().orElseThrow();
    assertThat(lines.origin()).isInstanceOf(SettingOutOrigin.DoorMiddle.class);
    // Worked out from the plan by hand: the doorway runs from 4,000 to 5,000 in the wall y = 0.
    assertThat(lines.along()).isCloseTo(3100, within(1e-9));
    assertThat(lines.aside()).isCloseTo(1700, within(1e-9));
    assertThat(lines.side()).isEqualTo(Hand.RIGHT);
    assertThat(lines.turned()).isEmpty();
  }

  @Test
  void a_graphic_in_the_doorways_own_line_needs_no_second_distance() {
    assertThat(of(new Vec(4500, 3000), 0, FLOOR, FRONT).lines().orElseThrow().aside()).isZero();
  }

  @Test
  void left_of_the_line_is_left_for_who_walks_in() {
    assertThat(of(new Vec(3000, 3000), 0, FLOOR, FRONT).lines().orElseThrow().side())
        .isEqualTo(Hand.LEFT);
    assertThat(of(new Vec(7000, 5000), 0, FLOOR, SIDE).lines().orElseThrow().side())
        .isEqualTo(Hand.RIGHT);
  }

  @Property(tries = 200)
  void walking_the_stated_way_with_a_tape_ends_at_the_middle(
      @ForAll @DoubleRange(min = 1500, max = 8500) double x,
      @ForAll @DoubleRange(min = 1500, max = 6500) double y) {
    SnappedLines lines = of(new Vec(x, y), 0, FLOOR, FRONT).lines().orElseThrow();
    double side = lines.side() == Hand.RIGHT ? 1 : -1;
    assertThat(4500 + side * lines.aside()).isCloseTo(x, within(0.8));
    assertThat(lines.along()).isCloseTo(y, within(1e-6));
  }

  @Test
  void every_right_angle_is_three_four_five_in_whole_units_with_the_lengths_that_it_states() {
    for (UnitSystem units : UnitSystem.values()) {
      SettingOut out =
          of(new Vec(6200, 3100), 0, new SettingOutFloor(FLOOR, ROOM, List.of(FRONT), units));
      SnappedLines lines = out.lines().orElseThrow();
      for (SquareCheck check : List.of(lines.square(), lines.crossSquare())) {
        assertThat(check.lineLeg() * check.lineLeg() + check.squareLeg() * check.squareLeg())
            .isEqualTo(check.across() * check.across());
        assertThat(check.unit()).isEqualTo(units == UnitSystem.METRIC ? 1000 : 304.8);
        assertThat(length(check.corner(), check.onLine()))
            .isCloseTo(check.lineLeg() * check.unit(), within(1e-6));
        assertThat(length(check.corner(), check.onSquare()))
            .isCloseTo(check.squareLeg() * check.unit(), within(1e-6));
        assertThat(length(check.onLine(), check.onSquare()))
            .isCloseTo(check.across() * check.unit(), within(1e-6));
      }
    }
  }

  private static double length(Vec a, Vec b) {
    return Math.sqrt(Math.pow(a.x() - b.x(), 2) + Math.pow(a.y() - b.y(), 2));
  }

  @Test
  void a_room_too_small_for_whole_meters_is_squared_in_whole_tenths() {
    List<OutlinePiece> small =
        List.of(
            OutlinePiece.wall(Spot.mm(0, 0)),
            OutlinePiece.wall(Spot.mm(2600, 0)),
            OutlinePiece.wall(Spot.mm(2600, 2400)),
            OutlinePiece.wall(Spot.mm(0, 2400)));
    Doorway door = new Doorway("d", "door", 0, Length.mm(900), Length.mm(800), true);
    SettingOutFloor floor =
        new SettingOutFloor(box(0, 0, 2600, 2400), small, List.of(door), UnitSystem.METRIC);
    SquareCheck check = of(new Vec(1300, 1200), 0, floor).lines().orElseThrow().square();
    assertThat(check.unit()).isEqualTo(100);
    assertThat(check.lineLeg() * check.unit()).isLessThan(1300);
  }

  @Test
  void a_way_in_comes_before_a_nearer_doorway_and_a_doorway_behind_a_counter_is_not_taken() {
    Vec middle = new Vec(8300, 3000);
    assertThat(origin(of(middle, 0, FLOOR, SIDE, FRONT))).isEqualTo("front door");
    Region counter = FLOOR.minus(box(3000, 500, 6500, 1500));
    assertThat(origin(of(middle, 0, counter, SIDE, FRONT))).isEqualTo("side door");
  }

  private static String origin(SettingOut out) {
    return ((SettingOutOrigin.DoorMiddle) out.lines().orElseThrow().origin()).doorway();
  }

  @Test
  void without_a_doorway_one_measures_along_the_nearest_wall_and_square_off_it() {
    SnappedLines lines = of(new Vec(6000, 2500), 0, FLOOR).lines().orElseThrow();
    SettingOutOrigin.WallPoint origin = (SettingOutOrigin.WallPoint) lines.origin();
    assertThat(origin.wallLetter()).isEqualTo("A");
    assertThat(origin.from().number()).isEqualTo(2);
    assertThat(origin.distance()).isCloseTo(4000, within(1e-9));
    assertThat(lines.along()).isCloseTo(2500, within(1e-9));
    assertThat(lines.aside()).isZero();
  }

  @Test
  void where_nothing_can_be_measured_from_there_are_no_lines() {
    Region island = FLOOR.minus(box(0, 0, 10_000, 100)).minus(box(0, 0, 100, 8000));
    Region shut = island.minus(box(0, 7900, 10_000, 8000)).minus(box(9900, 0, 10_000, 8000));
    assertThat(of(new Vec(5000, 4000), 0, shut).lines()).isEmpty();
  }

  @Test
  void a_turned_graphic_gets_lines_through_a_point_a_whole_length_on_and_so_far_aside() {
    SnappedLines lines = of(new Vec(4500, 3500), 20, FLOOR, FRONT).lines().orElseThrow();
    SnappedLines.Turned turned = lines.turned().orElseThrow();
    assertThat(turned.on()).isEqualTo(3000);
    assertThat(turned.off()).isCloseTo(3000 * Math.tan(Math.toRadians(20)), within(1e-6));
    assertThat(turned.side()).isEqualTo(Hand.LEFT);
    double up = Math.toDegrees(turned.through().minus(lines.cross()).angle());
    assertThat(up).isCloseTo(110, within(1e-6));
    assertThat(angle(lines.up())).isCloseTo(110, within(1e-6));
    assertThat(angle(lines.level())).isCloseTo(20, within(1e-6));
  }

  private static double angle(Line line) {
    Vec way = line.points().get(1).minus(line.points().get(0));
    return (Math.toDegrees(way.angle()) + 360) % 180;
  }

  @Test
  void the_panel_on_the_cross_comes_first_and_its_edges_are_told_from_the_lines() {
    SettingOut out = of(new Vec(4500, 3500), 0, FLOOR, FRONT);
    Vec cross = SET.blank().middle();
    PanelPlace first = out.panels().get(0);
    assertThat(first.lap()).isEqualTo(PanelPlace.Lap.FIRST);
    assertThat(out.panels().stream().filter(p -> p.lap() == PanelPlace.Lap.FIRST)).hasSize(1);
    for (PanelPlace p : out.panels()) {
      Bounds box =
          PLAN.panels().stream()
              .filter(x -> x.name().equals(p.panel()))
              .findFirst()
              .orElseThrow()
              .box();
      assertThat(p.left() + p.right()).isCloseTo(box.width(), within(1e-9));
      assertThat(p.above() + p.below()).isCloseTo(box.height(), within(1e-9));
      assertThat(cross.x() - p.left()).isCloseTo(box.minX(), within(1e-9));
      assertThat(cross.y() - p.above()).isCloseTo(box.minY(), within(1e-9));
    }
    assertThat(out.diagonal())
        .isCloseTo(
            Math.sqrt(Math.pow(SET.blank().width(), 2) + Math.pow(SET.blank().height(), 2)),
            within(1e-9));
  }

  @Test
  void a_neighbour_that_would_have_been_laid_before_goes_under_and_one_laid_after_goes_over() {
    List<PanelPlace> places = of(new Vec(4500, 3500), 0, FLOOR, FRONT).panels();
    int first = PLAN.layingOrder().indexOf(places.get(0).panel());
    for (PanelPlace p : places.subList(1, places.size())) {
      boolean earlier = PLAN.layingOrder().indexOf(p.panel()) < first;
      assertThat(p.lap()).isEqualTo(earlier ? PanelPlace.Lap.UNDER : PanelPlace.Lap.OVER);
    }
  }

  @Test
  void two_opposite_corners_of_the_blank_are_checked_by_ties_that_cross_at_them() {
    Vec middle = new Vec(5000, 3000);
    List<TieCheck> checks = of(middle, 20, FLOOR, FRONT).checks();
    assertThat(checks).hasSize(2);
    Affine toSite = new Placement(middle, 20).toSite(SET.blank());
    for (TieCheck c : checks) {
      assertThat(c.ties().angle()).isBetween(30.0, 150.0);
      assertThat(crossing(c.ties()).distanceTo(toSite.apply(c.corner().of(SET.blank()))))
          .isLessThan(1e-6);
    }
    Vec first = checks.get(0).corner().of(SET.blank());
    Vec second = checks.get(1).corner().of(SET.blank());
    assertThat(first.x()).isNotEqualTo(second.x());
    assertThat(first.y()).isNotEqualTo(second.y());
  }

  @Test
  void the_error_at_95_percent_is_that_of_a_point_in_two_dimensions() {
    SwingTies t = of(new Vec(5000, 3000), 0, FLOOR, FRONT).checks().get(0).ties();
    // Chi-square with two degrees of freedom: P(r < q) = 1 - exp(-q²/2).
    double q = t.errorAt95() / t.error();
    assertThat(1 - Math.exp(-q * q / 2)).isCloseTo(0.95, within(1e-4));
  }

  @Property(tries = 200)
  void the_arcs_cross_at_the_point_on_the_stated_side(
      @ForAll @DoubleRange(min = 100, max = 9900) double x,
      @ForAll @DoubleRange(min = 100, max = 7900) double y) {
    Optional<SwingTies> ties = search(FLOOR, SettingOutParameters.usual()).to(new Vec(x, y));
    assertThat(crossing(ties.orElseThrow()).distanceTo(new Vec(x, y))).isLessThan(1e-5);
  }

  private static SwingTieSearch search(Region free, SettingOutParameters rules) {
    return new SwingTieSearch(free, KnownCorner.of(ROOM), rules);
  }

  @Test
  void a_tape_does_not_run_through_what_stands_on_the_floor() {
    Region withCounter = FLOOR.minus(box(1000, 1000, 4000, 7000));
    SwingTies ties =
        search(withCounter, SettingOutParameters.usual()).to(new Vec(6000, 4000)).orElseThrow();
    assertThat(List.of(ties.first().number(), ties.second().number())).containsExactly(2, 3);
  }

  @Test
  void a_point_beyond_the_tape_or_where_ties_cross_too_flat_has_none() {
    SettingOutParameters shortTape = new SettingOutParameters(3000, 3, 2e-4, 30, 15_000);
    assertThat(search(FLOOR, shortTape).to(new Vec(5000, 4000))).isEmpty();
    List<KnownCorner> two = KnownCorner.of(ROOM).subList(0, 2);
    assertThat(new SwingTieSearch(FLOOR, two, SettingOutParameters.usual()).to(new Vec(4000, 300)))
        .isEmpty();
  }

  @Test
  void ties_that_cross_square_are_as_sure_as_one_reading_and_flat_ones_less() {
    assertThat(SwingTieSearch.error(3, 3, 1)).isCloseTo(3, within(1e-12));
    double flat = SwingTieSearch.error(3, 3, Math.sin(Math.toRadians(30)));
    assertThat(flat).isCloseTo(3 / (Math.sqrt(2) * Math.sin(Math.toRadians(15))), within(1e-9));
  }

  /** Where the two arcs cross, worked out from the lengths and the side alone. */
  private static Vec crossing(SwingTies t) {
    Vec base = t.second().at().minus(t.first().at());
    double d = base.length();
    double along =
        (t.fromFirst() * t.fromFirst() - t.fromSecond() * t.fromSecond() + d * d) / 2 / d;
    double out = Math.sqrt(Math.max(0, t.fromFirst() * t.fromFirst() - along * along));
    double sign = t.side() == Hand.LEFT ? 1 : -1;
    Vec way = base.unit();
    return t.first().at().plus(way.times(along)).plus(way.left().times(sign * out));
  }
}
