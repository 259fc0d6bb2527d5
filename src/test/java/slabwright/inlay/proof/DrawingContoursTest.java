package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Ring;

class DrawingContoursTest {
  private static final Ring BIG = Ring.rectangle(0, 0, 100, 60);
  private static final Ring SMALL = Ring.rectangle(20, 10, 50, 30);

  private static ShopDrawing.Piece filled(String hex, Ring... rings) {
    return new ShopDrawing.Piece(List.of(rings), FillRule.EVEN_ODD, Optional.of(hex));
  }

  private static ShopDrawing.Piece line(Ring ring, ShopDrawing.Role role) {
    return new ShopDrawing.Piece(List.of(ring), FillRule.NONZERO, Optional.empty(), role);
  }

  private static DrawingContours of(ShopDrawing.Piece... pieces) {
    return DrawingContours.of(new ShopDrawing(Arrays.asList(pieces)));
  }

  private static void assertArea(DrawingContours c, double mm2) {
    assertThat(c.area().area()).isCloseTo(mm2, within(0.01));
  }

  @Test
  void white_painted_over_a_shade_is_paper_again() {
    DrawingContours c = of(filled("#404a55", BIG), filled("#ffffff", SMALL));
    assertThat(c.shaded()).isTrue();
    assertArea(c, 6_000 - 600);
    assertThat(c.rings()).hasSize(2);
    assertThat(c.bounds()).isEqualTo(new Bounds(0, 0, 100, 60));
  }

  @Test
  void a_shade_painted_over_white_is_one() {
    assertArea(of(filled("#ffffff", BIG), filled("#404a55", SMALL)), 600);
  }

  /** L* of #f0f0f0 is 94.8, of #fcfcfc 99.0 (CIE 1976). */
  @Test
  void a_pale_grey_is_a_shade_and_what_is_nearly_white_is_paper() {
    assertThat(of(filled("#f0f0f0", BIG)).shaded()).isTrue();
    assertThat(of(filled("#fcfcfc", BIG)).shaded()).isFalse();
  }

  @Test
  void an_outline_drawn_as_fill_and_as_line_counts_once() {
    DrawingContours c =
        of(
            filled("#404a55", BIG),
            line(Ring.rectangle(0.02, 0, 100, 60), ShopDrawing.Role.UNKNOWN),
            line(SMALL, ShopDrawing.Role.UNKNOWN));
    assertThat(c.rings()).hasSize(2);
    assertArea(c, 6_000);
  }

  @Test
  void lines_alone_enclose_what_an_odd_number_of_them_surrounds() {
    DrawingContours c =
        of(line(BIG, ShopDrawing.Role.UNKNOWN), line(SMALL, ShopDrawing.Role.UNKNOWN));
    assertThat(c.shaded()).isFalse();
    assertThat(c.told()).isFalse();
    assertArea(c, 6_000 - 600);
  }

  /** A line amid our own edges is one more opening; one that stands beside them is none. */
  @Test
  void our_own_layer_says_which_lines_are_edges_of_openings() {
    Ring beside = Ring.rectangle(200, 0, 230, 30);
    DrawingContours c =
        of(
            line(BIG, ShopDrawing.Role.OPENING_EDGE),
            line(SMALL, ShopDrawing.Role.UNKNOWN),
            line(beside, ShopDrawing.Role.UNKNOWN),
            line(Ring.rectangle(60, 10, 70, 20), ShopDrawing.Role.PANEL_EDGE));
    assertThat(c.told()).isTrue();
    assertArea(c, 6_000 - 600);
  }
}
