package slabwright.inlay.settingout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.List;
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
import slabwright.shape.Region;
import slabwright.shape.Vec;

class SettingOutTest {
  private static final List<KnownCorner> ROOM =
      List.of(
          new KnownCorner(1, new Vec(0, 0)),
          new KnownCorner(2, new Vec(10_000, 0)),
          new KnownCorner(3, new Vec(10_000, 8000)),
          new KnownCorner(4, new Vec(0, 8000)));
  private static final Region FLOOR = box(0, 0, 10_000, 8000);

  @Test
  void every_panel_corner_has_two_ties_that_cross_well_and_meet_at_it() {
    StencilSet set = Graphics.one(box(0, 0, 1800, 1800));
    PanelPlan plan = new SeamPlanner(set, PanelParameters.usual()).best();
    SettingOut out =
        SettingOut.of(
            plan,
            new Placement(new Vec(5000, 3000), 20).toSite(set.blank()),
            FLOOR,
            ROOM,
            SettingOutParameters.usual());
    assertThat(out.points()).hasSize(8);
    for (SettingOutPoint point : out.points()) {
      SettingOutMethod.SwingTies ties = (SettingOutMethod.SwingTies) point.fix();
      assertThat(ties.angle()).isBetween(30.0, 150.0);
      assertThat(crossing(ties).distanceTo(point.at())).isLessThan(1e-6);
    }
    double diagonal = Math.hypot(plan.panels().get(0).box().width(), set.blank().height());
    assertThat(out.diagonals().get(0).length()).isEqualTo(diagonal);
  }

  @Property(tries = 50)
  void the_arcs_cross_at_the_point_on_the_stated_side(
      @ForAll @DoubleRange(min = 100, max = 9900) double x,
      @ForAll @DoubleRange(min = 100, max = 7900) double y) {
    SettingOutMethod fix =
        new SettingOutMethodSearch(FLOOR, ROOM, SettingOutParameters.usual()).to(new Vec(x, y));
    Vec found = crossing((SettingOutMethod.SwingTies) fix);
    assertThat(found.distanceTo(new Vec(x, y))).isLessThan(1e-5);
  }

  @Test
  void a_tape_does_not_run_through_what_stands_on_the_floor() {
    Region withCounter = FLOOR.minus(box(1000, 1000, 4000, 7000));
    SettingOutMethod fix =
        new SettingOutMethodSearch(withCounter, ROOM, SettingOutParameters.usual())
            .to(new Vec(6000, 4000));
    SettingOutMethod.SwingTies ties = (SettingOutMethod.SwingTies) fix;
    assertThat(List.of(ties.first().number(), ties.second().number())).containsExactly(2, 3);
  }

  @Test
  void where_ties_would_cross_too_flat_an_offset_from_a_line_is_given() {
    List<KnownCorner> two = ROOM.subList(0, 2);
    SettingOutMethod fix =
        new SettingOutMethodSearch(FLOOR, two, SettingOutParameters.usual()).to(new Vec(4000, 300));
    SettingOutMethod.Offset offset = (SettingOutMethod.Offset) fix;
    assertThat(offset.out()).isCloseTo(300, within(1e-9));
    assertThat(offset.along()).isCloseTo(4000, within(1e-9));
    assertThat(offset.side()).isEqualTo(SettingOutMethod.Hand.LEFT);
  }

  @Test
  void beyond_the_tape_nothing_is_pretended() {
    SettingOutParameters shortTape = new SettingOutParameters(1000, 3, 2e-4, 30, 0.5);
    assertThat(new SettingOutMethodSearch(FLOOR, ROOM, shortTape).to(new Vec(5000, 4000)))
        .isInstanceOf(SettingOutMethod.None.class);
  }

  @Test
  void ties_that_cross_square_are_as_sure_as_one_reading_and_flat_ones_less() {
    assertThat(SettingOutMethodSearch.error(3, 3, 1)).isCloseTo(3, within(1e-12));
    double flat = SettingOutMethodSearch.error(3, 3, Math.sin(Math.toRadians(30)));
    assertThat(flat).isCloseTo(3 / (Math.sqrt(2) * Math.sin(Math.toRadians(15))), within(1e-9));
  }

  /** Where the two arcs cross, worked out from the lengths and the side alone. */
  private static Vec crossing(SettingOutMethod.SwingTies t) {
    Vec base = t.second().at().minus(t.first().at());
    double d = base.length();
    double along =
        (t.fromFirst() * t.fromFirst() - t.fromSecond() * t.fromSecond() + d * d) / 2 / d;
    double out = Math.sqrt(Math.max(0, t.fromFirst() * t.fromFirst() - along * along));
    double sign = t.side() == SettingOutMethod.Hand.LEFT ? 1 : -1;
    Vec way = base.unit();
    return t.first().at().plus(way.times(along)).plus(way.left().times(sign * out));
  }
}
