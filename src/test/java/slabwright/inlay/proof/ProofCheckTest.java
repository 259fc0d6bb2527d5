package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.inlay.proof.ProofCases.Case;
import slabwright.shape.Affine;
import slabwright.shape.FillRule;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

class ProofCheckTest {
  private static final Affine HERE = Affine.IDENTITY;
  private final ProofCases bicycle = ProofCases.icon("bicycle.svg");
  private final ProofCases heart = ProofCases.icon("heart.svg");

  private static ProofReport check(ProofCases cases, ShopDrawing drawing, ShadingMeaning means) {
    return ProofCheck.run(cases.plan(), drawing, means);
  }

  @Test
  void a_right_drawing_has_no_fault() {
    ProofReport r = check(bicycle, bicycle.drawing(Case.RIGHT, HERE, 1), ShadingMeaning.PULLED_OUT);
    assertThat(r.faults()).isEmpty();
    assertThat(r.notes()).isEmpty();
    assertThat(r.overlap()).isGreaterThan(0.99);
  }

  @Test
  void the_same_drawing_is_exchanged_when_shading_stays() {
    ProofReport r = check(bicycle, bicycle.drawing(Case.RIGHT, HERE, 1), ShadingMeaning.STAYS);
    assertThat(r.faults()).containsExactly(new ProofFault.Exchanged());
  }

  @Test
  void shading_of_unknown_meaning_leaves_polarity_open() {
    ProofReport r =
        check(bicycle, bicycle.drawing(Case.EXCHANGED, HERE, 1), ShadingMeaning.UNKNOWN);
    assertThat(r.faults()).isEmpty();
    assertThat(r.notes()).containsExactly(new ProofNote.PolarityCannotBeTold(true));
    assertThat(r.verdict()).isEqualTo(ProofVerdict.CANNOT_TELL);
  }

  @Test
  void bare_lines_leave_polarity_open_and_are_checked_otherwise() {
    Affine pose = Affine.scale(-1.02, 1.02).then(Affine.turn(1));
    ShopDrawing lines =
        new Shop(pose, 3).edge(bicycle.blank(), HERE).lines(bicycle.openings(), HERE).drawing();
    ProofReport r = check(bicycle, lines, ShadingMeaning.PULLED_OUT);
    assertThat(r.faults()).hasSize(2).contains(new ProofFault.Mirrored());
    assertThat(r.faults().get(1))
        .isInstanceOfSatisfying(
            ProofFault.WrongSize.class, w -> assertThat(w.percent()).isCloseTo(2, within(0.1)));
    assertThat(r.notes()).contains(new ProofNote.PolarityCannotBeTold(false));
  }

  @Test
  void a_missing_edge_is_said() {
    ShopDrawing bare = new Shop(HERE, 3).shade(bicycle.openings(), HERE).drawing();
    ProofReport r = check(bicycle, bare, ShadingMeaning.PULLED_OUT);
    assertThat(r.faults()).containsExactly(new ProofFault.EdgeMissing(""));
  }

  @Test
  void an_edge_of_four_single_lines_is_an_edge() {
    ShopDrawing shaded = new Shop(HERE, 3).shade(bicycle.openings(), HERE).drawing();
    Vec a = Vec.ZERO;
    Vec b = new Vec(bicycle.blank().maxX(), 0);
    Vec c = new Vec(bicycle.blank().maxX(), bicycle.blank().maxY());
    Vec d = new Vec(0, bicycle.blank().maxY());
    List<Line> sides = List.of(Line.of(a, b), Line.of(c, d), Line.of(c, b), Line.of(d, a));
    Affine there = Affine.move(10_000, 10_000);
    ShopDrawing whole =
        ShopDrawing.joining(shaded.pieces(), sides.stream().map(side -> side.map(there)).toList());
    assertThat(check(bicycle, whole, ShadingMeaning.PULLED_OUT).faults()).isEmpty();
  }

  @Test
  void a_turn_alone_is_a_note() {
    Affine turn = Affine.turn(Math.toRadians(30));
    ProofReport r = check(bicycle, bicycle.drawing(Case.RIGHT, turn, 1), ShadingMeaning.PULLED_OUT);
    assertThat(r.faults()).isEmpty();
    assertThat(r.notes().get(0))
        .isInstanceOfSatisfying(
            ProofNote.Turned.class, t -> assertThat(t.degrees()).isCloseTo(30, within(0.05)));
  }

  @Test
  void mirroring_of_a_symmetric_graphic_cannot_be_told() {
    for (double flip : new double[] {1, -1}) {
      ShopDrawing d = heart.drawing(Case.RIGHT, Affine.scale(flip, 1), 1);
      ProofReport r = check(heart, d, ShadingMeaning.PULLED_OUT);
      assertThat(r.faults()).isEmpty();
      assertThat(r.notes()).contains(new ProofNote.MirroringCannotBeTold());
    }
  }

  @Test
  void an_added_piece_has_its_place_and_area() {
    ShopDrawing d =
        new Shop(Affine.turn(2), 5)
            .edge(bicycle.blank(), HERE)
            .shade(bicycle.openings().union(bicycle.addition()), HERE)
            .drawing();
    ProofReport r = check(bicycle, d, ShadingMeaning.PULLED_OUT);
    assertThat(r.faults()).hasSize(1);
    ProofFault.PieceAdded added = (ProofFault.PieceAdded) r.faults().get(0);
    assertThat(bicycle.addition().contains(added.at())).isTrue();
    assertThat(added.area()).isCloseTo(bicycle.addition().area(), within(500.0));
  }

  @Test
  void a_missing_piece_has_its_place_and_area() {
    ProofCases cup = ProofCases.icon("cup-hot.svg");
    Region lost =
        cup.openings().parts().stream().min(Comparator.comparingDouble(Region::area)).orElseThrow();
    ShopDrawing d =
        new Shop(Affine.turn(2), 5)
            .edge(cup.blank(), HERE)
            .shade(cup.openings().minus(lost), HERE)
            .drawing();
    ProofReport r = check(cup, d, ShadingMeaning.PULLED_OUT);
    assertThat(r.faults()).hasSize(1);
    ProofFault.PieceMissing missing = (ProofFault.PieceMissing) r.faults().get(0);
    assertThat(lost.contains(missing.at())).isTrue();
    assertThat(missing.area()).isCloseTo(lost.area(), within(lost.area() * 0.02));
  }

  @Test
  void several_faults_are_all_said() {
    Affine pose = Affine.scale(-0.98, 0.98).then(Affine.turn(2));
    Region wrong =
        Region.rectangle(bicycle.blank()).minus(bicycle.openings().union(bicycle.addition()));
    ShopDrawing d = new Shop(pose, 5).shade(wrong, HERE).drawing();
    ProofReport r = check(bicycle, d, ShadingMeaning.PULLED_OUT);
    assertThat(r.faults())
        .extracting(f -> f.getClass().getSimpleName())
        .containsExactlyInAnyOrder("Mirrored", "WrongSize", "Exchanged", "PieceAdded");
  }

  @Test
  void another_drawing_is_not_found() {
    ShopDrawing d = heart.drawing(Case.RIGHT, HERE, 1);
    ProofReport r = check(bicycle, d, ShadingMeaning.PULLED_OUT);
    assertThat(r.faults().get(0)).isInstanceOf(ProofFault.NotFound.class);
  }

  @Test
  void an_empty_drawing_is_not_found() {
    ProofReport r = check(bicycle, new ShopDrawing(List.of()), ShadingMeaning.PULLED_OUT);
    assertThat(r.faults()).containsExactly(new ProofFault.NotFound(0));
  }

  @Test
  void a_white_shape_on_a_dark_sheet_is_an_opening() {
    Ring edge = Ring.rectangle(0, 0, bicycle.blank().maxX(), bicycle.blank().maxY());
    ShopDrawing d =
        new ShopDrawing(
            List.of(
                new ShopDrawing.Piece(List.of(edge), FillRule.NONZERO, Optional.of("#222222")),
                new ShopDrawing.Piece(
                    bicycle.openings().rings(), FillRule.NONZERO, Optional.of("#ffffff"))));
    assertThat(check(bicycle, d, ShadingMeaning.STAYS).faults()).isEmpty();
  }

  @Test
  void moments_of_a_disc_and_of_a_turned_shape() {
    Ring disc =
        Region.rectangle(new slabwright.shape.Bounds(-.01, -.01, .01, .01))
            .offset(500, 0.01)
            .shells()
            .get(0);
    // about its centre a disc of area 1 has c11 = 1 / (2 pi)
    assertThat(RingMoments.of(disc).c11()).isCloseTo(1 / (2 * Math.PI), within(1e-4));
    Ring shape = Ring.of(0, 0, 300, 0, 300, 100, 120, 180, 0, 90);
    RingMoments a = RingMoments.of(shape);
    RingMoments b = RingMoments.of(shape.map(Affine.turn(0.7).then(Affine.scale(2, 2))));
    assertThat(a.dissimilarity(b)).isLessThan(1e-9);
    for (int k = 0; k < RingMoments.ORDER.size(); k++) {
      double turned = b.moments().get(k).angle() - a.moments().get(k).angle();
      double off = (turned - 0.7 * RingMoments.ORDER.get(k)) / (2 * Math.PI);
      assertThat(off - Math.rint(off)).isCloseTo(0, within(1e-9));
    }
    assertThat(b.centroid().distanceTo(Vec.ZERO)).isPositive();
  }
}
