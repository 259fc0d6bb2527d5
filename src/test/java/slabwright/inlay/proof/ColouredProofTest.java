package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.inlay.Graphics.box;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.inlay.Graphics;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilParameters;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Affine;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.units.CieLab;

/** What a shop sends for approval: the whole graphic in its colors on one page. */
class ColouredProofTest {
  private static final String TEAL = "#14505c";
  private static final String ORANGE = "#d8813c";
  private static final Region LETTER = Graphics.letterF(1800);
  private static final Region SUN = box(700, 1500, 2300, 1800).minus(box(900, 1500, 1300, 1600));
  private static final Region FLAG = box(1500, 100, 1650, 250).union(box(1650, 150, 2100, 200));
  private static final StencilSet SET =
      StencilSet.of(
          List.of(new DyeLayer(TEAL, 0, LETTER), new DyeLayer(ORANGE, 50, SUN.union(FLAG))),
          StencilParameters.usual());

  private static List<ProofBatch.Wanted> wanted() {
    List<ProofBatch.Wanted> all = new ArrayList<>();
    for (Stencil s : SET.stencils()) {
      ProofPlan plan = ProofPlan.whole(s.openings(), SET.blank());
      all.add(new ProofBatch.Wanted(s.layer(), plan, Optional.of(CieLab.ofHex(s.colour()))));
    }
    return all;
  }

  private static ShopDrawing.Piece fill(Region region, String colour) {
    return new ShopDrawing.Piece(region.rings(), FillRule.EVEN_ODD, Optional.of(colour));
  }

  private static ShopDrawing drawing(Region teal, Region orange, Affine placed) {
    Ring edge =
        Ring.rectangle(
            SET.blank().minX(), SET.blank().minY(), SET.blank().maxX(), SET.blank().maxY());
    List<ShopDrawing.Piece> pieces =
        List.of(
            new ShopDrawing.Piece(
                List.of(edge.map(placed)), FillRule.NONZERO, Optional.of("#e8e4da")),
            fill(teal.map(placed), "#1a5560"),
            fill(orange.map(placed), "#d47f40"));
    return new ShopDrawing(pieces);
  }

  private static List<ProofBatch.Judged> judged(ShopDrawing drawing) {
    return ProofBatch.run(
        wanted(),
        List.of(new ReturnedPage("proof.pdf", 1, drawing)),
        ShadingMeaning.PULLED_OUT,
        ProofLimits.USUAL);
  }

  private static List<String> faults(ProofBatch.Judged one) {
    return one.report().faults().stream().map(ProofFault::kind).toList();
  }

  private static Region openings(int stencil) {
    return SET.stencils().get(stencil - 1).openings();
  }

  @Test
  void each_stencil_is_judged_by_what_is_seen_in_its_color() {
    List<ProofBatch.Judged> judged =
        judged(drawing(openings(1), openings(2), Affine.move(400, 300)));
    assertThat(judged).extracting(ProofBatch.Judged::stencil).containsExactly(1, 2);
    assertThat(judged).allSatisfy(j -> assertThat(faults(j)).isEmpty());
    assertThat(judged.get(0).report().notes()).contains(new ProofNote.AllInColour());
  }

  @Test
  void a_piece_that_is_missing_in_one_color_is_said_of_its_stencil_alone() {
    List<ProofBatch.Judged> judged =
        judged(drawing(openings(1), openings(2).minus(FLAG), Affine.move(400, 300)));
    assertThat(faults(judged.get(0))).isEmpty();
    assertThat(faults(judged.get(1))).containsOnly("piece-missing");
  }

  @Test
  void a_picture_in_a_mirror_is_mirrored_in_every_color() {
    List<ProofBatch.Judged> judged = judged(drawing(openings(1), openings(2), Affine.scale(-1, 1)));
    assertThat(judged).hasSize(2);
    assertThat(judged).allSatisfy(j -> assertThat(faults(j)).containsExactly("mirrored"));
  }
}
