package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.inlay.Graphics.box;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.inlay.panel.Panel;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Three panels of 600 by 500 side by side, each with a mark of its own, drawn as one blank. */
class PanelLabelsTest {
  private static final Bounds BLANK = new Bounds(0, 0, 1_800, 500);

  private static final Region MARKS =
      Region.union(
          List.of(
              box(100, 100, 400, 300),
              box(700, 120, 900, 400),
              box(700, 120, 1_100, 180),
              box(1_300, 200, 1_400, 450),
              box(1_500, 80, 1_700, 160)));

  private static final ProofPlan PLAN =
      new ProofPlan(
          MARKS,
          BLANK,
          List.of(
              new Panel("A", new Bounds(0, 0, 600, 500)),
              new Panel("B", new Bounds(590, 0, 1_200, 500)),
              new Panel("C", new Bounds(1_190, 0, 1_800, 500))));

  private static ShopDrawing.Words word(String text, double x, double y) {
    return new ShopDrawing.Words(text, new Vec(x, y));
  }

  private static ShopDrawing.Piece piece(List<Ring> rings, FillRule rule, String fill) {
    return new ShopDrawing.Piece(rings, rule, Optional.ofNullable(fill));
  }

  private static ProofReport report(Affine pose, ShopDrawing.Words... words) {
    List<Ring> open = MARKS.rings().stream().map(r -> r.map(pose)).toList();
    List<Ring> edge = List.of(Ring.rectangle(0, 0, BLANK.maxX(), BLANK.maxY()).map(pose));
    List<ShopDrawing.Words> placed = new ArrayList<>();
    for (ShopDrawing.Words w : words) {
      placed.add(new ShopDrawing.Words(w.text(), pose.apply(w.at())));
    }
    ShopDrawing drawing =
        new ShopDrawing(
            List.of(piece(edge, FillRule.NONZERO, null), piece(open, FillRule.EVEN_ODD, "#404a55")),
            placed,
            List.of(),
            List.of(),
            0.022);
    return ProofCheck.run(PLAN, drawing, ShadingMeaning.PULLED_OUT);
  }

  private static List<ProofFault> faults(ShopDrawing.Words... words) {
    return report(Affine.IDENTITY, words).faults();
  }

  @Test
  void panels_that_bear_their_own_letters_are_as_planned() {
    assertThat(faults(word("A", 300, 480), word("B", 900, 480), word("C", 1_500, 480))).isEmpty();
    assertThat(faults(word("A", 300, 520), word("Panel c, 1 off", 1_500, 480))).isEmpty();
  }

  @Test
  void a_panel_with_the_letter_of_another_is_wrong_and_two_with_each_other_s_are_swapped() {
    assertThat(faults(word("A", 300, 480), word("C", 900, 480)))
        .containsExactly(new LabelFault.LabelWrong("B", "C"));
    assertThat(faults(word("Cut as panel-B please", 300, 480)))
        .containsExactly(new LabelFault.LabelWrong("A", "B"));
    assertThat(faults(word("B", 300, 480), word("A", 900, 480), word("C", 1_500, 480)))
        .containsExactly(new LabelFault.LabelsSwapped("A", "B"));
    assertThat(faults(word("B", 300, 480), word("C", 900, 480), word("A", 1_500, 480)))
        .containsExactly(
            new LabelFault.LabelWrong("A", "B"),
            new LabelFault.LabelWrong("B", "C"),
            new LabelFault.LabelWrong("C", "A"));
  }

  @Test
  void a_letter_counts_wherever_the_drawing_lies_and_however_it_is_turned() {
    Affine pose = Affine.turn(2.1).then(Affine.move(300, 7_000));
    assertThat(report(pose, word("B", 300, 480), word("A", 900, 480)).faults())
        .containsExactly(new LabelFault.LabelsSwapped("A", "B"));
  }

  @Test
  void in_an_overlap_either_letter_is_right() {
    assertThat(faults(word("A", 595, 480), word("B", 595, 460))).isEmpty();
    assertThat(faults(word("C", 595, 480))).hasSize(1);
  }

  /** 6 % of 1,800 mm is 108 mm. */
  @Test
  void a_letter_beside_the_film_counts_up_to_6_percent_of_its_size_away() {
    assertThat(faults(word("C", 300, 607))).containsExactly(new LabelFault.LabelWrong("A", "C"));
    assertThat(faults(word("C", 300, 609))).isEmpty();
    assertThat(faults(word("C", -107, 300))).containsExactly(new LabelFault.LabelWrong("A", "C"));
    assertThat(faults(word("C", -109, 300))).isEmpty();
  }

  @Test
  void other_words_inside_the_film_are_told_once_each_and_those_outside_are_not() {
    ProofReport report =
        report(
            Affine.IDENTITY,
            word("TRAM", 300, 480),
            word("TRAM", 900, 480),
            word("HALL", 900, 490),
            word("sheet 1 of 1", 900, 520));
    assertThat(report.faults()).isEmpty();
    assertThat(report.notes()).contains(new ProofNote.WordsInFilm(2, List.of("TRAM", "HALL")));
  }
}
