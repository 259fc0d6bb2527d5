package slabwright.inlay.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.inlay.Graphics;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.StencilParameters;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Bounds;
import slabwright.units.LetterNumbering;
import slabwright.words.Words;

class PanelPlanTest {
  private static final double INCH = 25.4;

  /** Roll example: 48 in roll, 1 in margins, 0.5 in overlap, a 120 in wide blank: 3 strips. */
  @Test
  void a_120_inch_blank_takes_three_strips_of_a_48_inch_roll() {
    assertThat(SeamCandidates.fewest(120 * INCH, 46 * INCH, 0.5 * INCH)).isEqualTo(3);
    PanelParameters rules =
        PanelParameters.usual()
            .withRoll(Roll.ofWidth(48 * INCH).withUsableWidth(46 * INCH))
            .withOverlap(0.5 * INCH);
    PanelPlan plan = new SeamPlanner(blank(120 * INCH, 60 * INCH), rules).even(StripDirection.DOWN);
    assertThat(plan.panels()).extracting(Panel::name).containsExactly("A", "B", "C");
  }

  @Test
  void panel_sizes_include_the_overlap() {
    PanelParameters rules = PanelParameters.usual().withRoll(Roll.ofWidth(1024)).withOverlap(20);
    PanelPlan plan =
        new SeamPlanner(blank(1500, 800), rules).at(StripDirection.DOWN, List.of(600.0));
    assertThat(plan.panels().get(0).box()).isEqualTo(new Bounds(0, 0, 620, 800));
    assertThat(plan.panels().get(1).box()).isEqualTo(new Bounds(600, 0, 1500, 800));
    assertThat(plan.laps().get(0).lap()).isEqualTo(new Bounds(600, 0, 620, 800));
    assertThat(plan.rollLength()).isEqualTo(1600);
    assertThat(plan.waste()).isCloseTo(1 - 1500.0 / 2048, within(1e-9));
  }

  @Test
  void the_usable_width_is_12_mm_less_at_each_edge() {
    assertThat(Roll.ofWidth(1000).usableWidth()).isEqualTo(976);
  }

  @Test
  void a_blank_that_fits_the_roll_one_way_is_one_panel() {
    PanelPlan plan = new SeamPlanner(blank(3000, 1000), PanelParameters.usual()).best();
    assertThat(plan.turn()).isEqualTo(StripDirection.ACROSS);
    assertThat(plan.panels()).extracting(Panel::name).containsExactly("A");
    assertThat(plan.laps()).isEmpty();
    assertThat(plan.rollLength()).isEqualTo(3000);
  }

  @Test
  void the_panel_nearest_the_traffic_is_laid_last_so_that_it_laps_on_top() {
    PanelParameters rules = PanelParameters.usual().withTrafficFrom(BlankSide.LEFT);
    PanelPlan plan = new SeamPlanner(blank(3000, 3000), rules).even(StripDirection.DOWN);
    assertThat(plan.layingOrder()).containsExactly("C", "B", "A");
    assertThat(plan.panels()).extracting(Panel::name).containsExactly("A", "B", "C");
  }

  @Test
  void a_strip_longer_than_the_longest_piece_is_cut_by_staggered_joints() {
    PanelParameters rules =
        PanelParameters.usual().withRoll(Roll.ofWidth(1219.2).withLongestPiece(2000));
    PanelPlan plan = new SeamPlanner(blank(2300, 3000), rules).best(StripDirection.DOWN);
    assertThat(plan.panels()).extracting(Panel::name).containsExactly("A1", "A2", "B1", "B2");
    double jointA = plan.panels().get(1).box().minY();
    double jointB = plan.panels().get(3).box().minY();
    assertThat(Math.abs(jointA - jointB)).isGreaterThanOrEqualTo(300);
    assertThat(plan.panels()).allMatch(p -> p.box().height() <= 2000.001);
  }

  @Test
  void every_seam_has_witness_marks_clear_of_the_openings() {
    StencilSet set = Graphics.one(box(0, 0, 2900, 2900));
    PanelPlan plan = new SeamPlanner(set, PanelParameters.usual()).best();
    assertThat(plan.laps()).hasSize(2);
    for (Seam seam : plan.laps()) {
      assertThat(seam.marks()).hasSizeGreaterThanOrEqualTo(2);
      for (WitnessMark mark : seam.marks()) {
        assertThat(set.openings().distanceTo(mark.at())).isGreaterThan(mark.arm());
        assertThat(seam.lap().contains(mark.at())).isTrue();
      }
    }
  }

  @Test
  void a_hand_moved_seam_that_makes_a_panel_too_wide_is_said() {
    PanelPlan plan =
        new SeamPlanner(blank(2000, 3000), PanelParameters.usual())
            .at(StripDirection.DOWN, List.of(1500.0));
    assertThat(plan.findings())
        .extracting(f -> Words.english().say(f.message()))
        .anyMatch(t -> t.startsWith("Panel A is"));
  }

  private static List<String> said(double width, double... seams) {
    List<Double> at = Arrays.stream(seams).boxed().toList();
    return new SeamPlanner(blank(width, 3000), PanelParameters.usual())
        .at(StripDirection.DOWN, at).findings().stream()
            .map(f -> Words.english().say(f.message()))
            .filter(t -> t.contains(" in) wide"))
            .toList();
  }

  /** A 48 in roll gives 1,195.2 mm; a panel is as wide as its strip and 12.7 mm of overlap. */
  @Test
  void how_wide_a_panel_is_and_by_how_much_too_wide_is_said_in_both_units() {
    assertThat(said(2000, 1500))
        .containsExactly(
            "Panel A is 1513 mm (59.6 in) wide, 318 mm (12.5 in) more than the roll can give. Move"
                + " its seam.");
    assertThat(said(1000, 980)).containsExactly("Panel B is only 20 mm (0.8 in) wide.");
    assertThat(said(2377.7, 1182.5)).isEmpty();
    assertThat(said(2377.7, 1182.6)).hasSize(1);
  }

  @Test
  void a_seam_pushed_off_the_blank_stays_at_its_edge_and_is_said() {
    PanelPlan plan =
        new SeamPlanner(blank(2000, 3000), PanelParameters.usual())
            .at(StripDirection.DOWN, List.of(-500.0, 900.0));
    assertThat(plan.panels()).allMatch(p -> p.box().width() > 0);
    assertThat(plan.findings())
        .extracting(f -> Words.english().say(f.message()))
        .anyMatch(t -> t.contains("only"));
  }

  @Test
  void a_seam_goes_through_the_gap_between_two_shapes() {
    StencilSet set = Graphics.one(box(0, 0, 900, 2000).union(box(1100, 0, 1900, 2000)));
    PanelPlan plan = new SeamPlanner(set, PanelParameters.usual()).best(StripDirection.DOWN);
    double seam = plan.seams().get(0);
    assertThat(seam).isBetween(900 + 50.8 + 25, 1100 + 50.8 - 25 - 12.7);
    assertThat(plan.cost().edge()).isZero();
  }

  @Test
  void rules_that_no_panel_can_meet_are_refused() {
    PanelParameters rules = PanelParameters.usual().withRoll(Roll.ofWidth(100)).withOverlap(60);
    assertThat(SeamPlanner.refusals(rules)).hasSize(1);
    assertThat(SeamPlanner.refusals(PanelParameters.usual())).isEmpty();
  }

  @Test
  void strips_after_z_go_on_with_two_letters() {
    assertThat(LetterNumbering.of(25)).isEqualTo("Z");
    assertThat(LetterNumbering.of(26)).isEqualTo("AA");
    assertThat(LetterNumbering.of(52)).isEqualTo("BA");
  }

  /** A blank of this size around a plain opening. */
  private static StencilSet blank(double width, double height) {
    DyeLayer layer = new DyeLayer("black", 0, box(0, 0, width - 101.6, height - 101.6));
    return StencilSet.of(List.of(layer), StencilParameters.usual());
  }
}
