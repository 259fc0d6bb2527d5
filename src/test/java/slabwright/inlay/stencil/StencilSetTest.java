package slabwright.inlay.stencil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slabwright.inlay.Graphics;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.words.Words;

class StencilSetTest {
  private static final DyeLayer PALE = new DyeLayer("pale", 80, box(0, 0, 300, 100));
  private static final DyeLayer DARK = new DyeLayer("dark", 20, box(300, 0, 500, 100));

  @Test
  void the_blank_is_the_openings_and_a_margin_all_round() {
    StencilSet set = StencilSet.of(List.of(PALE), StencilParameters.usual());
    assertThat(set.blank()).isEqualTo(new Bounds(0, 0, 401.6, 201.6));
    assertThat(set.origin()).isEqualTo(new Vec(-50.8, -50.8));
    assertThat(set.stencils().get(0).openings().bounds())
        .isEqualTo(new Bounds(50.8, 50.8, 350.8, 150.8));
  }

  @Test
  void a_drawing_of_countless_colours_is_no_stencil_set() {
    List<DyeLayer> layers =
        IntStream.range(0, 49)
            .mapToObj(i -> new DyeLayer("c" + i, 50, box(i * 20, 0, i * 20 + 10, 10)))
            .toList();
    StencilSet set = StencilSet.of(layers, StencilParameters.usual());
    assertThat(set.stencils()).isEmpty();
    assertThat(set.findings())
        .extracting(f -> Words.english().say(f.message()))
        .anyMatch(t -> t.startsWith("49 colors"));
  }

  @Test
  void a_margin_under_the_press_band_is_made_wider_and_said() {
    StencilSet set = StencilSet.of(List.of(PALE), StencilParameters.usual().withMargin(20));
    assertThat(set.blank().width()).isEqualTo(401.6);
    assertThat(set.findings())
        .extracting(f -> Words.english().say(f.message()))
        .anyMatch(t -> t.contains("press band"));
  }

  @Test
  void the_middle_of_a_ring_is_a_loose_piece_with_its_place_and_area() {
    Stencil stencil = Graphics.one(Graphics.squareRing()).stencils().get(0);
    assertThat(stencil.loosePieces()).hasSize(1);
    LoosePiece piece = stencil.loosePieces().get(0);
    assertThat(piece.area()).isCloseTo(40_000, within(1e-6));
    assertThat(piece.place().distanceTo(new Vec(250.8, 250.8))).isLessThan(10);
  }

  @Test
  void an_island_in_a_loose_piece_is_no_mask_and_a_piece_in_it_is_loose_too() {
    Region target =
        Graphics.squareRing().union(box(150, 150, 250, 250).minus(box(190, 190, 210, 210)));
    List<LoosePiece> loose = Graphics.one(target).stencils().get(0).loosePieces();
    assertThat(loose).extracting(LoosePiece::area).containsExactly(30_000.0, 400.0);
  }

  @Test
  void cut_length_counts_every_opening_boundary_once() {
    assertThat(Graphics.one(Graphics.squareRing()).cutLength()).isCloseTo(2400, within(1e-6));
  }

  @Test
  void touching_openings_of_one_stencil_have_no_cut_between_them() {
    StencilSet set = StencilSet.of(List.of(PALE, DARK), StencilParameters.usual().asOneStencil());
    assertThat(set.stencils()).hasSize(1);
    assertThat(set.cutLength()).isCloseTo(1200, within(1e-6));
  }

  @Test
  void spread_grows_only_under_what_is_laid_later() {
    StencilSet set = StencilSet.of(List.of(PALE, DARK), StencilParameters.usual().withSpread(5));
    Stencil pale = set.stencils().get(0);
    assertThat(pale.artwork().area()).isCloseTo(30_000, within(1e-6));
    assertThat(pale.openings().area()).isCloseTo(30_500, within(1e-6));
    assertThat(set.stencils().get(1).openings().area()).isCloseTo(20_000, within(1e-6));
    assertThat(set.openings().area()).isCloseTo(50_000, within(1e-6));
  }

  @Test
  void spread_does_not_jump_over_bare_floor() {
    DyeLayer apart = new DyeLayer("dark", 20, box(302, 0, 500, 100));
    StencilSet set = StencilSet.of(List.of(PALE, apart), StencilParameters.usual().withSpread(5));
    assertThat(set.stencils().get(0).openings().area()).isCloseTo(30_000, within(1e-6));
  }

  @Test
  void lighter_over_darker_is_warned_where_they_overlap() {
    StencilSet set = StencilSet.of(List.of(DARK, PALE), StencilParameters.usual().withSpread(5));
    assertThat(set.findings()).hasSize(1);
    assertThat(Words.english().say(set.findings().get(0).message()))
        .contains("pale is laid over the darker dark");
    assertThat(set.findings().get(0).at().orElseThrow().x()).isBetween(345.0, 352.0);
  }

  @Test
  void darker_over_lighter_is_not_warned() {
    StencilSet set = StencilSet.of(List.of(PALE, DARK), StencilParameters.usual().withSpread(5));
    assertThat(set.findings()).isEmpty();
  }

  @Test
  void a_colour_lighter_than_the_base_dye_is_warned() {
    StencilSet set = StencilSet.of(List.of(PALE, DARK), StencilParameters.usual().overBase(50));
    assertThat(set.findings())
        .singleElement()
        .extracting(f -> Words.english().say(f.message()))
        .asString()
        .contains("pale is lighter than the base dye");
  }

  @Test
  void the_laying_order_puts_the_lightest_first() {
    assertThat(DyeLayer.lightestFirst(List.of(DARK, PALE))).containsExactly(PALE, DARK);
  }

  @Test
  void nothing_dyed_is_said_and_not_thrown() {
    StencilSet set = StencilSet.of(List.of(), StencilParameters.usual());
    assertThat(set.findings()).extracting(Finding::weight).containsExactly(Finding.Weight.CANNOT);
    assertThat(set.stencils()).isEmpty();
  }
}
