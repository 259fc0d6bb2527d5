package slabwright.inlay.settingout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.List;
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

/** Where the lines of a graphic that is twice as wide as high are snapped, by hand. */
class SnappedLinesTest {
  private static final List<OutlinePiece> ROOM =
      List.of(
          OutlinePiece.wall(Spot.mm(0, 0)),
          OutlinePiece.wall(Spot.mm(10_000, 0)),
          OutlinePiece.wall(Spot.mm(10_000, 8000)),
          OutlinePiece.wall(Spot.mm(0, 8000)));
  private static final Region FLOOR = box(0, 0, 10_000, 8000);
  private static final StencilSet SET = Graphics.one(box(0, 0, 1800, 900));
  private static final PanelPlan PLAN = new SeamPlanner(SET, PanelParameters.usual()).best();
  private static final Vec MIDDLE = new Vec(6200, 3100);

  private static Doorway door(String name, double along) {
    return new Doorway(name, name, 0, Length.mm(along), Length.mm(1000), true);
  }

  private static SnappedLines of(Vec middle, double doorNear, Doorway... doors) {
    Affine toSite = new Placement(middle, 0).toSite(SET.blank());
    SettingOutParameters usual = SettingOutParameters.usual();
    SettingOutParameters rules =
        new SettingOutParameters(
            usual.longest(), usual.fixedError(), usual.errorShare(), usual.leastAngle(), doorNear);
    SettingOutFloor floor = new SettingOutFloor(FLOOR, ROOM, List.of(doors), UnitSystem.METRIC);
    return SettingOut.of(PLAN, middle, toSite, floor, rules).lines().orElseThrow();
  }

  private static void runs(Line line, Vec from, Vec to) {
    assertThat(line.points().get(0).minus(from).length()).isLessThan(1e-6);
    assertThat(line.points().get(1).minus(to).length()).isLessThan(1e-6);
  }

  @Test
  void both_lines_run_150_mm_past_the_blank_at_either_end() {
    SnappedLines lines = of(MIDDLE, 1e5, door("front", 4000));
    Bounds blank = SET.blank();
    double high = blank.height() / 2 + 150;
    double wide = blank.width() / 2 + 150;
    assertThat(wide).isGreaterThan(high + 400);
    runs(lines.up(), new Vec(6200, 3100 + high), new Vec(6200, 3100 - high));
    runs(lines.level(), new Vec(6200 - wide, 3100), new Vec(6200 + wide, 3100));
  }

  @Test
  void the_tape_starts_half_the_doorway_from_either_jamb() {
    SettingOutOrigin origin = of(MIDDLE, 1e5, door("front", 4000)).origin();
    assertThat(((SettingOutOrigin.DoorMiddle) origin).halfWidth()).isEqualTo(500, within(1e-9));
    assertThat(origin.at().minus(new Vec(4500, 0)).length()).isLessThan(1e-9);
  }

  @Test
  void of_two_ways_in_the_one_with_the_shorter_walk_is_taken() {
    Doorway far = door("far", 1000);
    Doorway near = door("near", 7000);
    for (SnappedLines lines : List.of(of(MIDDLE, 1e5, far, near), of(MIDDLE, 1e5, near, far))) {
      assertThat(((SettingOutOrigin.DoorMiddle) lines.origin()).doorway()).isEqualTo("near");
      assertThat(lines.side()).isEqualTo(Hand.LEFT);
      assertThat(lines.aside()).isEqualTo(1300, within(1e-9));
    }
  }

  /** 3,100 in from the wall and 1,700 aside. */
  @Test
  void a_doorway_just_near_enough_is_taken_and_one_farther_off_is_not() {
    Doorway front = door("front", 4000);
    assertThat(of(MIDDLE, 4800.001, front).origin())
        .isInstanceOf(SettingOutOrigin.DoorMiddle.class);
    assertThat(of(MIDDLE, 4799.999, front).origin()).isInstanceOf(SettingOutOrigin.WallPoint.class);
  }

  @Test
  void along_a_wall_one_measures_from_its_nearer_corner() {
    SettingOutOrigin.WallPoint left =
        (SettingOutOrigin.WallPoint) of(new Vec(4000, 2000), 1e5).origin();
    SettingOutOrigin.WallPoint right =
        (SettingOutOrigin.WallPoint) of(new Vec(7000, 2000), 1e5).origin();
    assertThat(left.distance()).isEqualTo(4000, within(1e-9));
    assertThat(left.from().at()).isEqualTo(new Vec(0, 0));
    assertThat(right.distance()).isEqualTo(3000, within(1e-9));
    assertThat(right.from().at()).isEqualTo(new Vec(10_000, 0));
    assertThat(right.at().minus(new Vec(7000, 0)).length()).isLessThan(1e-9);
  }

  /**
   * The door in the wall y = 0, looking in along y: left is toward x = 0. Nine meters to the left
   * of the door are free and one to its right; from the mark 7.5 m in there is room only back.
   */
  @Test
  void the_legs_of_both_right_angles_lie_on_the_sides_that_are_told() {
    SnappedLines lines = of(new Vec(9000, 7500), 1e5, door("front", 8500));
    assertThat(lines.aside()).isZero();
    for (var ends : List.of(lines.square().onLine(), lines.crossSquare().onSquare())) {
      assertThat(ends.x()).isLessThan(9000);
    }
    assertThat(List.of(lines.alongWall(), lines.offLine())).containsOnly(Hand.LEFT);
    assertThat(lines.crossSquare().onLine().y()).isLessThan(7500);
    assertThat(lines.goesOn()).isFalse();
    SnappedLines other = of(new Vec(1000, 1500), 1e5, door("front", 500));
    assertThat(other.square().onLine().x()).isGreaterThan(1000);
    assertThat(other.alongWall()).isEqualTo(Hand.RIGHT);
    assertThat(other.goesOn()).isTrue();
  }
}
