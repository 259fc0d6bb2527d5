package slabwright.desk.model.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.site.Form;
import slabwright.site.Spot;
import slabwright.units.Length;

class FormPointsTest {
  private static final Form TRIANGLE =
      new Form.Polygon(List.of(Spot.mm(0, 0), Spot.mm(400, 0), Spot.mm(0, 300)));

  @Test
  void a_bulged_side_makes_a_polygon_curved_and_straightened_it_is_the_polygon_again() {
    Form curved = FormPoints.bulged(TRIANGLE, 1, Length.mm(50));
    assertThat(curved).isInstanceOf(Form.Curved.class);
    assertThat(curved.region(0.1).area()).isGreaterThan(TRIANGLE.region(0.1).area());
    assertThat(FormPoints.bulged(curved, 1, Length.ZERO)).isEqualTo(TRIANGLE);
  }

  @Test
  void a_point_added_on_the_closing_side_changes_no_area_and_can_be_left_out_again() {
    Form more = FormPoints.more(TRIANGLE);
    assertThat(more.spots()).hasSize(4);
    assertThat(more.region(0.1).area()).isEqualTo(60_000);
    assertThat(FormPoints.without(more, 3)).isEqualTo(TRIANGLE);
  }

  @Test
  void a_path_goes_on_beyond_its_end() {
    Form path = new Form.Strip(List.of(Spot.mm(0, 0), Spot.mm(100, 0)), Length.mm(10));
    assertThat(FormPoints.more(path).spots().get(2)).isEqualTo(Spot.mm(150, 0));
  }

  @Test
  void a_moved_point_keeps_the_bulge_of_its_side() {
    Form curved = FormPoints.bulged(TRIANGLE, 1, Length.mm(50));
    Form moved = FormPoints.moved(curved, 1, Spot.mm(500, 0));
    assertThat(FormPoints.rise(moved, 1).mm()).isEqualTo(50);
    assertThat(moved.spots().get(1)).isEqualTo(Spot.mm(500, 0));
  }
}
