package slabwright.inlay.cutfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import slabwright.inlay.Graphics;
import slabwright.inlay.RandomGraphic;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelParameters;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.Roll;
import slabwright.inlay.panel.SeamPlanner;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Affine;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.words.Words;

class CutFilePropertyTest {
  private static final PanelParameters RULES =
      PanelParameters.usual().withRoll(Roll.ofWidth(700).withLongestPiece(1200)).withPitch(40);

  @Property(tries = 8)
  void cut_files_laid_in_place_give_the_openings_back(@ForAll long seed) throws Exception {
    Region letter = Graphics.letterF(300).map(Affine.move(1600, 0));
    StencilSet set = Graphics.one(new RandomGraphic(seed, 1500).region().union(letter));
    PanelPlan plan = new SeamPlanner(set, RULES).best();
    List<CutFile> files = new CutFileParameters("random", 1).files(set, plan);
    List<Region> laid = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      Panel panel = plan.cut(set.stencils().get(0)).get(i);
      Affine place = Affine.move(panel.box().minX(), panel.box().minY());
      CutReader svg = new CutReader(files.get(i).svg(Words.english()::say));
      laid.add(Region.of(svg.closedRings("kiss-cut"), FillRule.EVEN_ODD).map(place));
    }
    Region read = Region.union(laid);
    double apart = read.minus(set.openings()).area() + set.openings().minus(read).area();
    // curves stay within 0.05 mm of the flattened outline on either side
    assertThat(apart).isLessThan(0.05 * set.cutLength());
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void cut_files_laid_in_place_give_the_openings_back_of_200(@ForAll long seed) throws Exception {
    cut_files_laid_in_place_give_the_openings_back(seed);
  }
}
