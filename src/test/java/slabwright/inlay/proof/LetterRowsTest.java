package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** Three letters of 10 mm (L, a block, T) beside a plate, and the same in other strokes. */
class LetterRowsTest {
  private static final Region PLATE = box(-100, 0, -40, 100);
  private static final Region L = box(0, 0, 2, 10).union(box(0, 8, 6, 10));
  private static final Region BLOCK = box(8, 0, 14, 10);
  private static final Region T = box(16, 0, 24, 2).union(box(19, 0, 21, 10));

  /** A fifth of each letter is gone at one end and is there again beside its other end. */
  private static final List<Region> GONE =
      List.of(box(0, 0, 2, 2), box(8, 0, 14, 2), box(16, 0, 18, 2));

  private static final List<Region> NEW =
      List.of(box(2, 4, 4, 6), box(14, 5, 15.5, 10), box(21, 6, 23, 10));

  private static List<LetterRows.Found> found(
      Region letters, List<Region> gone, List<Region> added) {
    Region open = letters.minus(Region.union(gone)).union(Region.union(added));
    return new LetterRows(PLATE.union(letters), PLATE.union(open), gone, added).found();
  }

  private static Region word() {
    return Region.union(List.of(L, BLOCK, T));
  }

  @Test
  void letters_in_another_typeface_are_one_fault_with_their_number_and_place() {
    List<LetterRows.Found> found = found(word(), GONE, NEW);
    assertThat(found).hasSize(1);
    ProofFault.OtherTypeface fault = found.get(0).fault();
    assertThat(fault.count()).isEqualTo(3);
    assertThat(fault.at()).isEqualTo(new Vec(12, 5));
    assertThat(fault.sizeMm()).isEqualTo(24);
    assertThat(found.get(0).area()).isCloseTo(28 + 60 + 32, within(1e-9));
  }

  /** The tallest letter's shorter side is 8 mm; a quarter of that all round. */
  @Test
  void all_that_differs_in_and_just_about_the_row_is_told_by_it() {
    assertThat(found(word(), GONE, NEW).get(0).box()).isEqualTo(new Bounds(-2, -2, 26, 12));
  }

  @Test
  void strokes_that_run_wider_one_after_the_other_belong_to_the_row() {
    List<Region> wide = new ArrayList<>(NEW);
    wide.add(box(27, 0, 29, 10));
    wide.add(box(30, 0, 32, 10));
    wide.add(box(40, 0, 42, 10));
    assertThat(found(word(), GONE, wide).get(0).box().maxX()).isEqualTo(32);
  }

  @Test
  void what_is_larger_than_a_letter_beside_it_is_no_stroke_of_it() {
    List<Region> wide = new ArrayList<>(NEW);
    wide.add(box(27, 0, 36, 10));
    assertThat(found(word(), GONE, wide).get(0).box().maxX()).isEqualTo(26);
  }

  @Test
  void two_letters_are_no_row_nor_are_three_of_which_one_is_as_planned() {
    Region two = L.union(BLOCK);
    List<Region> three = List.of(box(0, 0, 2, 2), box(8, 0, 14, 2), box(8, 8, 14, 9));
    assertThat(found(two, three, NEW)).isEmpty();
    assertThat(found(word(), three, NEW)).isEmpty();
  }

  @Test
  void letters_that_are_gone_with_nothing_in_their_place_are_no_other_typeface() {
    assertThat(found(word(), GONE, List.of())).isEmpty();
    assertThat(found(word(), GONE, List.of(box(60, 0, 70, 10)))).isEmpty();
    assertThat(found(word(), GONE, List.of(box(2, 4, 3, 5)))).isEmpty();
  }

  @Test
  void much_more_or_much_less_ink_than_planned_is_another_drawing() {
    assertThat(found(word(), GONE, List.of(box(-2, -2, 26, 12)))).isEmpty();
    List<Region> nearlyAll =
        List.of(box(0, 0, 2, 10), box(8, 0, 14, 9), box(16, 0, 24, 2), box(0, 8, 6, 10));
    assertThat(found(word(), nearlyAll, List.of(box(21, 6, 23, 10)))).isEmpty();
  }

  @Test
  void letters_far_from_each_other_are_no_row() {
    Region apart = Region.union(List.of(L, BLOCK, T.map(Affine.move(40, 0))));
    List<Region> gone = List.of(GONE.get(0), GONE.get(1), GONE.get(2).map(Affine.move(40, 0)));
    assertThat(found(apart, gone, NEW)).isEmpty();
  }

  @Test
  void a_row_of_dots_all_alike_is_no_lettering() {
    List<Region> dots = new ArrayList<>();
    List<Region> gone = new ArrayList<>();
    List<Region> added = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Affine there = Affine.move(8 * i, 0);
      dots.add(box(0, 0, 6, 6).map(there));
      gone.add(box(0, 0, 6, 1).map(there));
      added.add(box(0, 6, 6, 7).map(there));
    }
    assertThat(found(Region.union(dots), gone, added)).isEmpty();
  }

  @Test
  void three_that_make_no_longer_row_than_it_is_high_are_no_word() {
    Region second = BLOCK.map(Affine.move(-8, 12));
    Region third = T.map(Affine.move(-8, 12));
    Region heap = Region.union(List.of(L, second, third));
    List<Region> gone =
        List.of(
            GONE.get(0),
            GONE.get(1).map(Affine.move(-8, 12)),
            GONE.get(2).map(Affine.move(-8, 12)));
    List<Region> added =
        List.of(
            NEW.get(0), NEW.get(1).map(Affine.move(-8, 12)), NEW.get(2).map(Affine.move(-8, 12)));
    assertThat(found(heap, gone, added)).isEmpty();
  }

  @Test
  void large_openings_are_no_letters() {
    Affine large = Affine.scale(6, 6);
    List<Region> gone = GONE.stream().map(r -> r.map(large)).toList();
    List<Region> added = NEW.stream().map(r -> r.map(large)).toList();
    assertThat(found(word().map(large), gone, added)).hasSize(1);
    Region open = word().minus(Region.union(GONE)).union(Region.union(NEW));
    assertThat(new LetterRows(BLOCK.union(L), open, GONE, NEW).found()).isEmpty();
  }
}
