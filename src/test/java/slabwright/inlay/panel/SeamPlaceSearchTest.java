package slabwright.inlay.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A blank of 1,000 mm with places for seams at 300, 500 and 700, pieces lapping by 10 mm. */
class SeamPlaceSearchTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private static List<Double> seams(double narrowest, double widest, double... cost) {
    SeamPlaceSearch.Piece piece = new SeamPlaceSearch.Piece(narrowest, widest, 10, 5);
    return new SeamPlaceSearch(new double[] {300, 500, 700}, 1_000, piece)
        .cheapest(cost)
        .orElse(List.of(-1.0));
  }

  @Test
  void the_fewest_pieces_are_the_cheapest_unless_a_seam_costs_more_than_a_piece() {
    assertThat(seams(100, 1_000, 1, 1, 1)).isEmpty();
    assertThat(seams(100, 600, 1, 1, 1)).containsExactly(500.0);
    assertThat(seams(100, 600, 1, 7.5, 1)).containsExactly(300.0, 700.0);
    assertThat(seams(100, 600, 1, 6.5, 1)).containsExactly(500.0);
    assertThat(seams(100, 600, 1, NEVER, 1)).containsExactly(300.0, 700.0);
  }

  /** The first piece to 500 is 510 wide with its lap, the last one 500. */
  @Test
  void a_piece_is_as_wide_as_its_lap_makes_it() {
    assertThat(seams(100, 510, 1, 1, 1)).containsExactly(500.0);
    assertThat(seams(100, 509, 1, 2, 1)).containsExactly(300.0, 700.0);
    assertThat(seams(500, 600, 1, 1, 1)).containsExactly(500.0);
    assertThat(seams(501, 600, 1, 1, 1)).containsExactly(-1.0);
    assertThat(seams(100, 309, 1, 1, 1)).containsExactly(-1.0);
    assertThat(seams(300, 310, 1, 1, 1)).containsExactly(-1.0);
  }
}
