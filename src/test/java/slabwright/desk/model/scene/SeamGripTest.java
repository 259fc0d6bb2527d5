package slabwright.desk.model.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.HandSeams;
import slabwright.units.Length;

class SeamGripTest {
  /** A blank of 3 × 2 m read from the site's right: its top points to the site's left. */
  private static final Affine TO_SITE =
      Affine.scale(1, -1).then(Affine.turn(Math.PI / 2)).then(Affine.move(1000, 500));

  @Test
  void a_seam_is_held_where_its_lap_lies_on_the_site() {
    SeamGrip grip = grip(HandSeams.Strips.DOWN);
    Vec onSite = TO_SITE.apply(new Vec(1006, 700));
    assertThat(grip.at(onSite, 5)).contains(0);
    assertThat(grip.at(TO_SITE.apply(new Vec(1500, 700)), 5)).isEmpty();
  }

  @Test
  void a_dragged_seam_follows_the_pointer_across_the_strips_alone() {
    SeamGrip grip = grip(HandSeams.Strips.DOWN);
    HandSeams moved = grip.through(1, TO_SITE.apply(new Vec(2206, 1300)));
    assertThat(moved.places().get(0).mm()).isEqualTo(1000);
    assertThat(moved.places().get(1).mm()).isCloseTo(2200, within(1e-9));
  }

  @Test
  void strips_across_are_moved_up_and_down() {
    HandSeams moved = grip(HandSeams.Strips.ACROSS).through(0, TO_SITE.apply(new Vec(50, 406)));
    assertThat(moved.places().get(0).mm()).isCloseTo(400, within(1e-9));
  }

  @Test
  void a_seam_stays_between_its_neighbours_and_on_the_blank() {
    SeamGrip grip = grip(HandSeams.Strips.DOWN);
    assertThat(grip.moved(0, Length.mm(5000)).places().get(0).mm()).isEqualTo(1999);
    assertThat(grip.moved(1, Length.mm(5000)).places().get(1).mm()).isEqualTo(2987);
    assertThat(grip.moved(0, Length.mm(-70)).places().get(0).mm()).isEqualTo(1);
  }

  @Test
  void an_arrow_moves_a_seam_its_way_on_the_site_and_one_along_it_does_not() {
    SeamGrip grip = grip(HandSeams.Strips.DOWN);
    Vec up = new Vec(0, 1);
    Vec right = new Vec(1, 0);
    assertThat(grip.nudged(1, up, 10).places().get(1).mm()).isEqualTo(2010);
    assertThat(grip.nudged(1, up.times(-1), 100).places().get(1).mm()).isEqualTo(1900);
    assertThat(grip.nudged(1, right, 10)).isEqualTo(grip.seams());
    assertThat(grip(HandSeams.Strips.ACROSS).nudged(0, right, 10).places().get(0).mm())
        .isEqualTo(1010);
  }

  @Test
  void a_typed_place_is_kept_as_it_was_typed() {
    assertThat(grip(HandSeams.Strips.DOWN).moved(0, Length.inches(40)).places().get(0))
        .isEqualTo(Length.inches(40));
  }

  private static SeamGrip grip(HandSeams.Strips strips) {
    HandSeams seams = new HandSeams(strips, List.of(Length.mm(1000), Length.mm(2000)));
    return new SeamGrip("i", seams, TO_SITE, new Bounds(0, 0, 3000, 2000), 12);
  }
}
