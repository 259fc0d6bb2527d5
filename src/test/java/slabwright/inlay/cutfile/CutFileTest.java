package slabwright.inlay.cutfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slabwright.inlay.Graphics;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelParameters;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.RegistrationTick;
import slabwright.inlay.panel.SeamPlanner;
import slabwright.inlay.panel.StripDirection;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.StencilParameters;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Affine;
import slabwright.shape.FillRule;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.shape.curve.CurvedRing;
import slabwright.words.Words;

class CutFileTest {
  private static final CutFileParameters JOB = new CutFileParameters("Heron & ring", 3);

  @Test
  void the_page_is_the_panel_in_true_millimetres() throws Exception {
    CutReader svg =
        new CutReader(first(Graphics.one(Graphics.letterF(500))).svg(Words.english()::say));
    assertThat(svg.attribute("width")).isEqualTo("401.6mm");
    assertThat(svg.attribute("height")).isEqualTo("601.6mm");
    assertThat(svg.attribute("viewBox")).isEqualTo("0 0 401.6 601.6");
  }

  @Test
  void the_release_stands_in_name_and_title_and_not_on_the_cut_layer() throws Exception {
    CutFile file = first(Graphics.one(Graphics.letterF(500)));
    CutReader svg = new CutReader(file.svg(Words.english()::say));
    assertThat(file.name()).isEqualTo("heron-ring_release-3_panel-A");
    assertThat(svg.words("title")).contains("release 3").contains("Heron & ring");
    assertThat(svg.elements("kiss-cut")).containsOnly("path");
  }

  @Test
  void read_back_the_cut_layer_is_the_openings_and_no_mirror_image() throws Exception {
    StencilSet set = Graphics.one(Graphics.letterF(500));
    CutReader svg = new CutReader(first(set).svg(Words.english()::say));
    Region read = Region.of(svg.closedRings("kiss-cut"), FillRule.EVEN_ODD);
    assertThat(read).isEqualTo(set.openings());
    Region mirrored = read.map(Affine.scale(-1, 1).then(Affine.move(401.6, 0)));
    assertThat(mirrored.minus(set.openings()).area()).isGreaterThan(10_000);
  }

  /** Discs and a ring: all round, one inside the other. */
  private static Region round() {
    Region dot = box(-0.01, -0.01, 0.01, 0.01);
    Region ring = dot.offset(300, 0.02).minus(dot.offset(200, 0.02));
    return ring.union(dot.offset(80, 0.02)).map(Affine.move(350, 350)).union(box(700, 0, 900, 90));
  }

  @Test
  void curves_leave_as_curves_and_read_back_within_a_twentieth_of_a_millimetre() throws Exception {
    StencilSet set = Graphics.one(round());
    CutFile file = first(set);
    Region read =
        Region.of(
            new CutReader(file.svg(Words.english()::say)).closedRings("kiss-cut"),
            FillRule.EVEN_ODD);
    assertThat(worst(read, set.openings())).isLessThan(0.05);
    assertThat(worst(set.openings(), read)).isLessThan(0.05);
    int points = set.openings().rings().stream().mapToInt(r -> r.points().size()).sum();
    int pieces = file.outlines().stream().mapToInt(r -> r.pieces().size()).sum();
    assertThat(points).isGreaterThan(400);
    assertThat(pieces).isLessThan(60);
    assertThat(file.outlines().stream().mapToInt(CurvedRing::curves).sum()).isLessThan(56);
  }

  private static double worst(Region from, Region to) {
    return from.rings().stream()
        .flatMap(r -> r.points().stream())
        .mapToDouble(p -> to.nearestOnBoundary(p).distanceTo(p))
        .max()
        .orElseThrow();
  }

  @Test
  void inner_outlines_are_cut_before_those_around_them() throws Exception {
    CutReader svg = new CutReader(first(Graphics.one(round())).svg(Words.english()::say));
    List<Ring> rings = svg.closedRings("kiss-cut");
    for (int i = 0; i < rings.size(); i++) {
      Region earlier = Region.of(rings.get(i));
      for (Ring later : rings.subList(i + 1, rings.size())) {
        assertThat(earlier.contains(later.points().get(0))).isFalse();
      }
    }
  }

  @Test
  void a_panel_says_in_pen_strokes_which_it_is_and_where_its_top_is() throws Exception {
    CutFile file = first(Graphics.one(Graphics.letterF(500)));
    PenLabel label = file.label().orElseThrow();
    assertThat(label.text(Words.english()::say)).isEqualTo("top - panel A, stencil 1, black");
    for (Line stroke : label.strokes(Words.english()::say)) {
      for (Vec p : stroke.points()) {
        assertThat(label.box().grown(1e-6).contains(p)).isTrue();
        assertThat(file.openings().distanceTo(p)).isGreaterThan(3);
      }
    }
    assertThat(new CutReader(file.svg(Words.english()::say)).words("title")).contains("panel A");
  }

  /** A shop with the panel alone in its hands sees a colour's name and not only its code. */
  @Test
  void a_panel_says_its_colour_by_name_in_letters_that_the_pen_has() {
    StencilSet set =
        StencilSet.of(
            List.of(new DyeLayer("#14505c", 0, box(0, 0, 300, 200))), StencilParameters.usual());
    PenLabel label = first(set).label().orElseThrow();
    assertThat(label.text(Words.english()::say))
        .isEqualTo("top - panel A, stencil 1, dark teal (#14505c)");
    for (char c : "DARK TEAL (#14505C)".replace(" ", "").toCharArray()) {
      assertThat(StrokeLetters.lines(String.valueOf(c), Vec.ZERO, 6)).as("%s", c).isNotEmpty();
    }
  }

  @Test
  void an_empty_panel_is_not_cut() {
    StencilSet set =
        StencilSet.of(
            List.of(
                new DyeLayer("black", 0, box(0, 0, 1800, 500)),
                new DyeLayer("red", 50, box(1500, 550, 1700, 700))),
            StencilParameters.usual());
    PanelPlan plan =
        new SeamPlanner(set, PanelParameters.usual()).at(StripDirection.DOWN, List.of(900.0));
    assertThat(JOB.files(set, plan))
        .extracting(CutFile::name)
        .containsExactly(
            "heron-ring_release-3_stencil-1_panel-A",
            "heron-ring_release-3_stencil-1_panel-B",
            "heron-ring_release-3_stencil-2_panel-B");
    double spared = plan.rollLength() - plan.rollLength(set.stencils().get(1));
    assertThat(spared).isCloseTo(set.blank().height(), within(1e-9));
  }

  @Test
  void large_waste_is_divided_inside_openings_alone() {
    CutFile file = first(Graphics.one(Graphics.squareRing().map(Affine.scale(2.5, 2.5))));
    assertThat(file.weedCuts()).isNotEmpty();
    for (Line cut : file.weedCuts()) {
      for (int k = 0; k <= 20; k++) {
        Vec p = cut.points().get(0).towards(cut.points().get(1), k / 20.0);
        assertThat(file.openings().contains(p)).isTrue();
        assertThat(file.openings().nearestOnBoundary(p).distanceTo(p)).isGreaterThan(1.8);
      }
    }
    assertThat(first(Graphics.one(Graphics.letterF(300))).weedCuts()).isEmpty();
  }

  @Test
  void no_line_is_cut_twice_where_an_opening_crosses_a_panels_edge() throws Exception {
    StencilSet set = Graphics.one(box(0, 0, 1800, 500));
    PanelPlan plan =
        new SeamPlanner(set, PanelParameters.usual()).at(StripDirection.DOWN, List.of(900.0));
    CutReader svg = new CutReader(JOB.files(set, plan).get(0).svg(Words.english()::say));
    double cut = svg.closedRings("kiss-cut").stream().mapToDouble(Ring::length).sum();
    double trim = svg.length("through-cut");
    double outline = 2 * (912.7 + set.blank().height());
    double inside = 2 * (912.7 - 50.8) + 500;
    assertThat(cut + trim).isCloseTo(outline + inside, within(1e-6));
  }

  @Test
  void the_outline_is_one_closed_line_or_goes_from_opening_to_opening() throws Exception {
    CutReader whole =
        new CutReader(first(Graphics.one(Graphics.letterF(300))).svg(Words.english()::say));
    assertThat(whole.paths("through-cut")).hasSize(1).allMatch(d -> d.endsWith("Z"));
    StencilSet set = Graphics.one(box(0, 0, 1800, 500));
    PanelPlan plan =
        new SeamPlanner(set, PanelParameters.usual()).at(StripDirection.DOWN, List.of(900.0));
    CutReader crossed = new CutReader(JOB.files(set, plan).get(0).svg(Words.english()::say));
    assertThat(crossed.paths("through-cut")).hasSize(1).noneMatch(d -> d.endsWith("Z"));
  }

  @Test
  void both_panels_of_a_seam_carry_the_same_witness_marks() throws Exception {
    StencilSet set = Graphics.one(box(0, 0, 1800, 500));
    PanelPlan plan =
        new SeamPlanner(set, PanelParameters.usual()).at(StripDirection.DOWN, List.of(900.0));
    List<CutFile> files = JOB.files(set, plan);
    List<Vec> left = crosses(files.get(0), 0);
    List<Vec> right = crosses(files.get(1), 900);
    assertThat(left).hasSizeGreaterThanOrEqualTo(4).containsExactlyElementsOf(right);
  }

  /** The number is the one that the floor and the plan file have: the plan's own ticks. */
  @Test
  void each_tick_on_a_panel_has_its_number_beside_it_in_the_pen_layer_alone() throws Exception {
    StencilSet set = Graphics.one(box(100, 100, 1700, 400));
    PanelPlan plan =
        new SeamPlanner(set, PanelParameters.usual()).at(StripDirection.DOWN, List.of(900.0));
    for (int i = 0; i < 2; i++) {
      Panel panel = plan.cut(set.stencils().get(0)).get(i);
      CutFile file = JOB.files(set, plan).get(i);
      CutReader svg = new CutReader(file.svg(Words.english()::say));
      Vec corner = new Vec(panel.box().minX(), panel.box().minY());
      List<RegistrationTick> ticks = plan.ticks(panel);
      assertThat(ticks).hasSizeGreaterThanOrEqualTo(RegistrationTick.NEEDED);
      List<String> read = new ArrayList<>();
      for (RegistrationTick t : ticks) {
        read.add(figures(svg, t.at().minus(corner), file.openings()));
      }
      assertThat(read).isEqualTo(ticks.stream().map(t -> String.valueOf(t.number())).toList());
      assertThat(svg.paths("kiss-cut")).hasSameSizeAs(file.outlines());
      assertThat(svg.paths("through-cut")).hasSameSizeAs(file.trim());
    }
  }

  /**
   * The number beside a tick, read from what the file draws: the strokes of a number, upright, at
   * least 4 mm high, on no opening; tried are 1 to 30.
   */
  private static String figures(CutReader svg, Vec tick, Region open) {
    List<List<Vec>> pen = svg.lines("pen");
    for (int number = 30; number > 0; number--) {
      for (double height : new double[] {5, 4}) {
        double width = StrokeLetters.width(String.valueOf(number).length(), height);
        for (Vec at :
            List.of(
                new Vec(3, 3),
                new Vec(3, -3 - height),
                new Vec(-3 - width, 3),
                new Vec(-3 - width, -3 - height))) {
          List<Line> strokes = StrokeLetters.lines(String.valueOf(number), tick.plus(at), height);
          if (strokes.stream().allMatch(s -> isAmong(pen, s))) {
            assertThat(strokes).noneMatch(open::meets);
            return String.valueOf(number);
          }
        }
      }
    }
    return "none";
  }

  private static boolean isAmong(List<List<Vec>> pen, Line stroke) {
    return pen.stream()
        .anyMatch(
            p ->
                p.size() == stroke.points().size()
                    && IntStream.range(0, p.size())
                        .allMatch(k -> p.get(k).distanceTo(stroke.points().get(k)) < 0.01));
  }

  @Test
  void odd_names_make_sound_files_all_the_same() throws Exception {
    StencilSet set = Graphics.one(Graphics.letterF(500));
    PanelPlan plan = new SeamPlanner(set, PanelParameters.usual()).best();
    CutFile file = new CutFileParameters("<\u0001>", 0).files(set, plan).get(0);
    assertThat(file.name()).isEqualTo("inlay_draft_panel-A");
    assertThat(new CutReader(file.svg(Words.english()::say)).words("title"))
        .startsWith("< >, draft");
  }

  @Test
  void a_draft_says_so() {
    assertThat(Words.english().say(new CutFileParameters("Wheel", 0).issue())).isEqualTo("draft");
  }

  /** Middles of the bars of witness crosses, which are shorter than those of registration ticks. */
  private static List<Vec> crosses(CutFile file, double shift) {
    List<Vec> middles = new ArrayList<>();
    for (Line bar : file.marks()) {
      if (bar.points().size() == 2 && bar.length() < 2 * RegistrationTick.ARM - 0.1) {
        Vec m = bar.points().get(0).towards(bar.points().get(1), 0.5);
        middles.add(new Vec(Math.rint((m.x() + shift) * 100) / 100, Math.rint(m.y() * 100) / 100));
      }
    }
    return middles;
  }

  private static CutFile first(StencilSet set) {
    PanelPlan plan = new SeamPlanner(set, PanelParameters.usual()).best();
    return JOB.files(set, plan).get(0);
  }
}
