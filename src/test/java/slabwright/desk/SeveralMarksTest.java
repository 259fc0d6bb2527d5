package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import slabwright.desk.model.PlanItem;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkType;

class SeveralMarksTest extends RoomOnDesk {
  @Override
  List<Mark> marks() {
    return List.of(
        island("low", 2000, 3000, 1000, 1000),
        island("mid", 4000, 3000, 1000, 1000),
        island("top", 6000, 3000, 1000, 1000));
  }

  @Test
  void a_row_of_the_list_is_dragged_to_lie_elsewhere() throws TimeoutException {
    hands.dragRow("mark-row-top", "mark-row-low");
    assertThat(order()).containsExactly("low", "top", "mid");
    assertThat(undoName()).isEqualTo("site.mark-edit.reorder");
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(order()).containsExactly("low", "mid", "top");
  }

  @Test
  void several_are_picked_on_the_slab_with_shift_and_moved_together() throws TimeoutException {
    hands.clickSlab(2000, 3000).with(KeyCode.SHIFT, () -> hands.clickSlab(6000, 3000));
    assertThat(picked()).containsExactly(new PlanItem.OfMark("low"), new PlanItem.OfMark("top"));
    hands.press(KeyCode.UP);
    assertThat(middle("low")).isEqualTo(new Vec(2000, 3010));
    assertThat(middle("mid")).isEqualTo(new Vec(4000, 3000));
    assertThat(middle("top")).isEqualTo(new Vec(6000, 3010));
    hands.clickSlab(2000, 3010);
    assertThat(picked()).containsExactly(new PlanItem.OfMark("low"));
  }

  @Test
  void several_are_picked_in_the_list() throws TimeoutException {
    hands.click("mark-row-mid").with(KeyCode.SHIFT, () -> hands.click("mark-row-low"));
    assertThat(picked()).containsExactly(new PlanItem.OfMark("mid"), new PlanItem.OfMark("low"));
  }

  @Test
  void marks_and_doorways_are_copied_and_pasted() throws TimeoutException {
    hands.press(KeyCode.DIGIT1).click("tool-DOORWAY").line("1 m").clickSlab(2000, 0);
    hands.fill("door-offset", "1.5 m").click("tool-PICK").clickSlab(2000, 0);
    hands.press(KeyCode.SHORTCUT, KeyCode.C).press(KeyCode.SHORTCUT, KeyCode.V);
    List<Doorway> doors = hands.area().doorways();
    assertThat(doors).hasSize(2);
    assertThat(doors.get(1).offset().mm()).isCloseTo(2805, within(1e-6));
    hands.clickSlab(4000, 3000).press(KeyCode.SHORTCUT, KeyCode.C);
    hands.press(KeyCode.SHORTCUT, KeyCode.V).press(KeyCode.SHORTCUT, KeyCode.V);
    assertThat(hands.area().marks()).hasSize(5);
    assertThat(undoName()).isEqualTo("desk.model.clipboard.paste");
  }

  @Test
  void booths_are_repeated_along_a_wall_and_move_with_it() throws TimeoutException {
    hands.click("tool-BOOTH").line("1.2 m x 0.7 m gap 0.3 m");
    hands.drag(new Vec(8000, 500), new Vec(8000, 5200));
    List<Mark> booths =
        hands.area().marks().stream().filter(m -> m.kind().type() == MarkType.BOOTH).toList();
    assertThat(booths).hasSize(3).allMatch(b -> b.follows().getAsInt() == 1);
    List<Double> up = booths.stream().map(b -> b.form().spots().get(0).y().mm()).toList();
    assertThat(up.get(1) - up.get(0)).isCloseTo(1500, within(1e-6));
    assertThat(booths).allMatch(b -> Math.abs(b.form().spots().get(0).x().mm() - 7650) < 1e-6);
  }

  private Vec middle(String id) {
    return ((Form.Rectangle) mark(id).form()).middle().vec();
  }
}
