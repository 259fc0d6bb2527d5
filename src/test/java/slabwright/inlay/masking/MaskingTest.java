package slabwright.inlay.masking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slabwright.inlay.Graphics;
import slabwright.inlay.panel.BlankSide;
import slabwright.inlay.panel.PanelParameters;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.SeamPlanner;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.EdgeClass;
import slabwright.site.Overspray;
import slabwright.units.Length;

class MaskingTest {
  /** A 600 mm square opening in a blank of 701.6 mm. */
  private static final StencilSet SQUARE = Graphics.one(box(0, 0, 600, 600));

  private static final PanelPlan PLAN = new SeamPlanner(SQUARE, PanelParameters.usual()).best();

  @Test
  void a_margin_as_wide_as_the_band_is_all_pressed() {
    Masking masking = Masking.of(SQUARE, PLAN, reach(450));
    assertThat(masking.pressBandArea()).isCloseTo(701.6 * 701.6 - 360_000, within(1.0));
    assertThat(masking.looseMask().get(0).area()).isCloseTo(0, within(1.0));
  }

  @Test
  void the_middle_of_a_large_loose_piece_stays_loose() {
    StencilSet ring = Graphics.one(Graphics.squareRing());
    PanelPlan plan = new SeamPlanner(ring, PanelParameters.usual()).best();
    Masking masking = Masking.of(ring, plan, reach(450));
    double inner = 200 - 2 * 50.8;
    assertThat(masking.looseMask().get(0).area()).isCloseTo(inner * inner, within(0.5));
  }

  /** Two sets of which one is the other's rest; a band of 0.3 mm is below its own tolerance. */
  @Test
  void press_band_and_loose_vinyl_share_nothing_and_together_are_the_mask() {
    for (double width : List.of(0.0, 0.3, 5.0, 50.8)) {
      for (Region graphic : List.of(Graphics.squareRing(), Graphics.letterF(900))) {
        StencilSet set = Graphics.one(graphic);
        PanelPlan plan = new SeamPlanner(set, PanelParameters.usual()).best();
        Overspray mist = new Overspray.Stated(Length.mm(450));
        Masking masking = Masking.of(set, plan, MaskingParameters.of(width, mist));
        Region pressed = masking.pressBands().get(0);
        Region loose = masking.looseMask().get(0);
        assertThat(pressed.intersect(loose).area()).as("shared, %s mm", width).isZero();
        assertThat(pressed.union(loose))
            .as("both, %s mm", width)
            .isEqualTo(set.stencils().get(0).mask());
      }
    }
  }

  /** Steiner: a square grown by r has area A + P r + π r². */
  @Test
  void the_skirt_is_the_reach_around_the_openings_less_the_blank() {
    Masking masking = Masking.of(SQUARE, PLAN, reach(450));
    double reached = 360_000 + 2400 * 450.0 + Math.PI * 450 * 450;
    double expected = reached - 701.6 * 701.6;
    assertThat(masking.skirt().area())
        .isCloseTo(expected, within(1.0 * (2400 + 2 * Math.PI * 450)));
  }

  @Test
  void the_skirt_ends_where_the_floor_ends() {
    Region floor = box(-2000, -100, 2000, 2000);
    Masking masking = Masking.of(SQUARE, PLAN, reach(450), new FloorAround(floor, List.of()));
    assertThat(masking.skirt().bounds().minY()).isEqualTo(-100);
  }

  @Test
  void paper_covers_each_side_in_as_few_strips_as_can_be() {
    List<PaperRun> paper = Masking.of(SQUARE, PLAN, reach(450)).paper();
    assertThat(paper).extracting(PaperRun::side).containsExactly(BlankSide.values());
    assertThat(paper).allMatch(p -> p.strips() == 1 && p.width() == 457.2);
  }

  /**
   * At the blank's upper edge, 50.8 mm above the opening, mist that reaches 450 mm goes √(450² −
   * 50.8²) mm past the opening's corner; the side runs fit between the other two.
   */
  @Test
  void paper_begins_where_the_mist_does_from_its_corner_of_the_blank() {
    List<PaperRun> paper = Masking.of(SQUARE, PLAN, reach(450)).paper();
    double past = Math.sqrt(450 * 450 - 50.8 * 50.8) - 50.8;
    for (PaperRun p : paper) {
      boolean level = p.side() == BlankSide.TOP || p.side() == BlankSide.BOTTOM;
      assertThat(p.from()).as("%s", p.side()).isCloseTo(level ? -past : 0, within(1.0));
      assertThat(p.length()).isCloseTo(701.6 - 2 * p.from(), within(1.0));
    }
  }

  @Test
  void a_wall_within_reach_gets_upright_masking_of_the_mists_height() {
    Overspray fan = new Overspray.Fan(Length.mm(300), 90, Length.mm(50), Length.mm(50));
    UprightMasking upright = atWall(-149.2, fan);
    assertThat(upright.height().orElseThrow()).isCloseTo(200, within(0.5));
    assertThat(upright.length()).isCloseTo(600 + 2 * Math.sqrt(400 * 400 - 200 * 200), within(2.0));
  }

  @Test
  void mist_never_reaches_above_the_nozzle() {
    Overspray fan = new Overspray.Fan(Length.mm(300), 90, Length.mm(500), Length.mm(50));
    assertThat(atWall(0, fan).height()).hasValue(300);
  }

  @Test
  void a_stated_reach_leaves_the_height_open() {
    assertThat(atWall(0, new Overspray.Stated(Length.mm(450))).height()).isEmpty();
  }

  private static UprightMasking atWall(double y, Overspray overspray) {
    Line foot = Line.of(new Vec(-3000, y), new Vec(3000, y));
    FloorAround.UprightObstacle wall =
        new FloorAround.UprightObstacle(EdgeClass.WALL.label(), foot, OptionalDouble.empty());
    FloorAround around = new FloorAround(box(-3000, y, 3000, 3000), List.of(wall));
    MaskingParameters rules = MaskingParameters.of(50.8, overspray);
    List<UprightMasking> found = Masking.of(SQUARE, PLAN, rules, around).upright();
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static MaskingParameters reach(double mm) {
    return MaskingParameters.of(50.8, new Overspray.Stated(Length.mm(mm)));
  }
}
