package slabwright.inlay.stencil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Affine;
import slabwright.shape.Arcs;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

class ThinPlaceFinderTest {
  /** 100 mm wide at both ends, {@code 2 * half} wide at the waist at (100, 0). */
  private static Region hourglass(double half) {
    return Region.of(Ring.of(0, -50, 100, -half, 200, -50, 200, 50, 100, half, 0, 50));
  }

  @Test
  void a_square_has_no_thin_place() {
    assertThat(ThinPlaceFinder.in(box(0, 0, 100, 100), 20)).isEmpty();
  }

  @Test
  void an_hourglass_has_one_at_its_waist() {
    List<ThinPlace> thin = ThinPlaceFinder.in(hourglass(1.5), 10);
    assertThat(thin).hasSize(1);
    assertThat(thin.get(0).width()).isCloseTo(3, within(1e-6));
    assertThat(thin.get(0).at().distanceTo(new Vec(100, 0))).isLessThan(1e-6);
  }

  @Test
  void a_waist_wider_than_the_limit_is_none() {
    assertThat(ThinPlaceFinder.in(hourglass(5.1), 10)).isEmpty();
  }

  @Test
  void a_long_thin_bar_is_one_place_with_its_own_width() {
    List<ThinPlace> thin = ThinPlaceFinder.in(box(0, 0, 500, 4), 10);
    assertThat(thin).hasSize(1);
    assertThat(thin.get(0).width()).isCloseTo(4, within(1e-6));
  }

  @Test
  void a_plate_with_two_thin_bridges_has_two() {
    Region plate = box(0, 0, 300, 100).minus(box(100, 3, 200, 97));
    assertThat(ThinPlaceFinder.in(plate, 10)).hasSize(2);
  }

  @Test
  void the_web_between_two_round_holes_is_found_where_they_are_nearest() {
    Region holes =
        Region.of(Arcs.circle(new Vec(50, 50), 20, 0.02))
            .union(Region.of(Arcs.circle(new Vec(92.5, 50), 20, 0.02)));
    List<ThinPlace> thin = ThinPlaceFinder.in(box(0, 0, 150, 100).minus(holes), 5);
    assertThat(thin).hasSize(1);
    assertThat(thin.get(0).width()).isCloseTo(2.5, within(0.1));
    assertThat(thin.get(0).at().distanceTo(new Vec(71.25, 50))).isLessThan(1.5);
  }

  @Test
  void a_sharp_point_is_a_needle_and_no_thin_place() {
    Region wedge = Region.of(Ring.of(0, 0, 200, -15, 200, 15));
    assertThat(ThinPlaceFinder.in(wedge, 10)).isEmpty();
    assertThat(SharpCornerFinder.sharper(wedge, 20))
        .extracting(SharpCorner::at)
        .containsExactly(new Vec(0, 0));
  }

  @Test
  void a_sharp_notch_is_no_needle_of_the_part_it_cuts_into() {
    Region notched = box(0, 0, 100, 100).minus(Region.of(Ring.of(50, 50, 45, 0, 55, 0)));
    assertThat(SharpCornerFinder.sharper(notched, 20)).isEmpty();
  }

  @Test
  void a_turn_changes_nothing() {
    Region turned = hourglass(1.5).map(Affine.turn(0.7));
    assertThat(ThinPlaceFinder.in(turned, 10)).hasSize(1);
    assertThat(ThinPlaceFinder.in(turned, 10).get(0).width()).isCloseTo(3, within(0.01));
  }
}
