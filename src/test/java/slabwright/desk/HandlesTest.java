package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Spot;
import slabwright.units.Length;

class HandlesTest extends RoomOnDesk {
  @Override
  List<Mark> marks() {
    Form patch =
        new Form.Polygon(
            List.of(
                Spot.mm(5000, 1000),
                Spot.mm(7000, 1000),
                Spot.mm(7000, 2000),
                Spot.mm(5000, 2000)));
    Form round = new Form.Circle(Spot.mm(6000, 4000), Length.mm(300));
    return List.of(
        island("box", 2000, 3000, 2000, 1000),
        island("bench", 6500, 5750, 1000, 500),
        Mark.of("spot", "spot", new MarkKind.Patch(), patch),
        Mark.of("post", "post", new MarkKind.Column(), round));
  }

  @Test
  void a_corner_of_a_box_is_dragged_and_the_corner_across_stays() throws TimeoutException {
    hands.clickSlab(2000, 3000).drag(new Vec(3000, 3500), new Vec(3500, 4000));
    Form.Rectangle box = (Form.Rectangle) mark("box").form();
    assertThat(box.length().mm()).isCloseTo(2500, within(60.0));
    assertThat(box.width().mm()).isCloseTo(1500, within(60.0));
    double left = box.middle().x().mm() - box.length().mm() / 2;
    assertThat(left).isCloseTo(1000, within(1e-6));
  }

  @Test
  void a_click_on_a_handle_changes_nothing() throws TimeoutException {
    Form before = mark("box").form();
    hands.clickSlab(2000, 3000).clickSlab(3000, 3500).clickSlab(3000, 3000);
    assertThat(mark("box").form()).isEqualTo(before);
  }

  @Test
  void the_rim_of_a_column_is_dragged() throws TimeoutException {
    hands.clickSlab(6000, 4000).drag(new Vec(6300, 4000), new Vec(6500, 4000));
    assertThat(((Form.Circle) mark("post").form()).radius().mm()).isCloseTo(500, within(60.0));
  }

  @Test
  void a_side_is_bent_into_an_arc_and_typed_true() throws TimeoutException {
    hands.clickSlab(6000, 1500).drag(new Vec(6000, 2000), new Vec(6000, 2400));
    assertThat(mark("spot").form()).isInstanceOf(Form.Curved.class);
    hands.fill("point-bulge-2", "0.5 m");
    Form.Curved arc = (Form.Curved) mark("spot").form();
    assertThat(arc.corners().get(2).rise().mm()).isEqualTo(500);
    assertThat(arc.region(0.1).bounds().maxY()).isCloseTo(2500, within(0.2));
  }

  @Test
  void a_wall_is_bulged_by_its_knob() throws TimeoutException {
    hands.press(javafx.scene.input.KeyCode.DIGIT1).clickSlab(2000, 6000);
    double off = 6 * (96 / 25.4) / DeskUnderTest.on(() -> hands.slab().viewport().scale());
    hands.drag(new Vec(4000, 6000 - off), new Vec(4000, 6600 - off));
    assertThat(hands.area().outline().get(2).rise().mm()).isCloseTo(600, within(60.0));
  }

  @Test
  void what_stands_at_a_wall_is_turned_by_a_knob_on_the_floor_and_not_on_the_walls_dimension()
      throws TimeoutException {
    hands.clickSlab(6500, 5750);
    double off = 8 * (96 / 25.4) / DeskUnderTest.on(() -> hands.slab().viewport().scale());
    hands.drag(new Vec(6500, 5500 - off), new Vec(6500 + 250 + off, 5750));
    assertThat(Math.abs(((Form.Rectangle) mark("bench").form()).turn()) % 180).isEqualTo(90);
  }

  @Test
  void a_jamb_is_dragged_and_the_other_stays() throws TimeoutException {
    hands.press(javafx.scene.input.KeyCode.DIGIT1).click("tool-DOORWAY").line("2 m");
    hands.clickSlab(4000, 0).fill("door-offset", "3 m").click("tool-PICK").clickSlab(4000, 0);
    hands.drag(new Vec(5000, 0), new Vec(6000, 0));
    var door = hands.area().doorways().get(0);
    assertThat(door.offset().mm()).isEqualTo(3000);
    assertThat(door.width().mm()).isCloseTo(3000, within(60.0));
  }
}
