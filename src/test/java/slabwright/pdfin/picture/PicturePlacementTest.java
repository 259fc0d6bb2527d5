package slabwright.pdfin.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import slabwright.shape.Affine;
import slabwright.shape.Vec;

class PicturePlacementTest {
  @Test
  void two_points_and_a_length_give_the_scale() {
    Affine placing =
        PicturePlacement.byLength(new Vec(100, 50), new Vec(400, 450), 5000, new Vec(7, 9))
            .orElseThrow();
    assertThat(placing.apply(new Vec(100, 50)).distanceTo(new Vec(7, 9))).isLessThan(1e-9);
    assertThat(placing.apply(new Vec(400, 450)).distanceTo(new Vec(3007, -3991))).isLessThan(1e-9);
  }

  @Test
  void a_picture_s_down_is_the_site_s_down() {
    Affine placing = PicturePlacement.byLength(Vec.ZERO, new Vec(1, 0), 10, Vec.ZERO).orElseThrow();
    assertThat(placing.apply(new Vec(0, 1)).y()).isEqualTo(-10, within(1e-12));
    assertThat(placing.determinant()).isNegative();
  }

  @Test
  void two_pairs_of_points_turn_it_as_well() {
    Vec a = new Vec(10, 20);
    Vec b = new Vec(110, 20);
    Affine placing =
        PicturePlacement.byTwoPoints(a, b, new Vec(0, 0), new Vec(0, 2000)).orElseThrow();
    assertThat(placing.apply(a).distanceTo(Vec.ZERO)).isLessThan(1e-9);
    assertThat(placing.apply(b).distanceTo(new Vec(0, 2000))).isLessThan(1e-9);
    assertThat(placing.apply(new Vec(10, 30)).distanceTo(new Vec(200, 0))).isLessThan(1e-9);
  }

  @Test
  void one_point_twice_gives_nothing() {
    Vec p = new Vec(3, 4);
    assertThat(PicturePlacement.byLength(p, p, 100, p)).isEmpty();
    assertThat(PicturePlacement.byLength(p, Vec.ZERO, 0, p)).isEmpty();
    assertThat(PicturePlacement.byTwoPoints(p, Vec.ZERO, p, p)).isEmpty();
  }
}
