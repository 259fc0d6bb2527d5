package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Of a box from (1, 2) to (5, 4). */
class BoundsTest {
  private static final Bounds BOX = new Bounds(1, 2, 5, 4);

  @ParameterizedTest
  @CsvSource({"3,3,0", "1,4,0", "0,3,1", "7,3,2", "3,-1,3", "3,8,4", "8,8,5", "-2,-2,5"})
  void the_distance_is_nothing_inside_and_else_that_to_the_rim(double x, double y, double mm) {
    assertThat(BOX.distanceTo(new Vec(x, y))).isEqualTo(mm);
  }

  @ParameterizedTest
  @CsvSource({"1,2,true", "5,4,true", "0.9,3,false", "5.1,3,false", "3,1.9,false", "3,4.1,false"})
  void the_rim_belongs_to_it(double x, double y, boolean inside) {
    assertThat(BOX.contains(new Vec(x, y))).isEqualTo(inside);
  }

  @ParameterizedTest
  @CsvSource({
    "5,2,6,3,true",
    "0,2,1,3,true",
    "2,4,3,5,true",
    "2,1,3,2,true",
    "5.1,2,6,3,false",
    "0,2,0.9,3,false",
    "2,4.1,3,5,false",
    "2,1,3,1.9,false"
  })
  void boxes_that_touch_meet(double x0, double y0, double x1, double y1, boolean meet) {
    assertThat(BOX.meets(new Bounds(x0, y0, x1, y1))).isEqualTo(meet);
    assertThat(new Bounds(x0, y0, x1, y1).meets(BOX)).isEqualTo(meet);
  }

  @Test
  void one_point_is_a_box_and_none_is_not() {
    assertThat(Bounds.of(List.of(new Vec(3, 3))).isEmpty()).isFalse();
    assertThat(Bounds.EMPTY.isEmpty()).isTrue();
    assertThat(Bounds.EMPTY.width()).isZero();
    assertThat(BOX.grown(-1.5).height()).isZero();
    assertThat(BOX.grown(1)).isEqualTo(new Bounds(0, 1, 6, 5));
  }
}
