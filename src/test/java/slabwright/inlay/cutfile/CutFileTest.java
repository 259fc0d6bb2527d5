package slabwright.inlay.cutfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.inlay.Graphics;
import slabwright.inlay.panel.PanelParameters;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.SeamPlanner;
import slabwright.inlay.panel.StripDirection;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Affine;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
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

  @Test
  void no_line_is_cut_twice_where_an_opening_crosses_a_panels_edge() throws Exception {
    StencilSet set = Graphics.one(box(0, 0, 1800, 500));
    PanelPlan plan =
        new SeamPlanner(set, PanelParameters.usual()).at(StripDirection.DOWN, List.of(900.0));
    CutReader svg = new CutReader(JOB.files(set, plan).get(0).svg(Words.english()::say));
    double cut = svg.closedRings("kiss-cut").stream().mapToDouble(Ring::length).sum();
    double trim =
        svg.segments("through-cut").stream().mapToDouble(s -> s[0].distanceTo(s[1])).sum();
    double outline = 2 * (912.7 + set.blank().height());
    double inside = 2 * (912.7 - 50.8) + 500;
    assertThat(cut + trim).isCloseTo(outline + inside, within(1e-6));
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

  private static List<Vec> crosses(CutFile file, double shift) throws Exception {
    List<Vec> middles = new ArrayList<>();
    for (Vec[] bar : new CutReader(file.svg(Words.english()::say)).segments("pen")) {
      Vec m = bar[0].towards(bar[1], 0.5);
      middles.add(new Vec(Math.rint((m.x() + shift) * 100) / 100, Math.rint(m.y() * 100) / 100));
    }
    return middles;
  }

  private static CutFile first(StencilSet set) {
    PanelPlan plan = new SeamPlanner(set, PanelParameters.usual()).best();
    return JOB.files(set, plan).get(0);
  }
}
