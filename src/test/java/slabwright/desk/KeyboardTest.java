package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.concurrent.TimeoutException;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.MarkKind;

class KeyboardTest extends RoomOnDesk {
  @Test
  void a_trench_is_made_and_changed_without_the_pointer() throws TimeoutException {
    hands.press(KeyCode.T).line("600 mm").line("2 m, 1 m");
    hands.press(KeyCode.UP).line("3 m").press(KeyCode.RIGHT).line("1.5 m").press(KeyCode.ENTER);
    Form.Strip trench = (Form.Strip) hands.area().marks().get(0).form();
    assertThat(trench.spots().stream().map(s -> s.vec()).toList())
        .containsExactly(new Vec(2000, 1000), new Vec(2000, 4000), new Vec(3500, 4000));
    hands.tabTo("mark-width").line("450 mm");
    assertThat(((Form.Strip) hands.area().marks().get(0).form()).width().mm()).isEqualTo(450);
    hands.tabTo("trench-levelled").press(KeyCode.SPACE);
    assertThat(((MarkKind.Trench) hands.area().marks().get(0).kind()).levelled()).isTrue();
  }

  @Test
  void residue_covers_the_floor_from_wall_to_wall_with_one_click() throws TimeoutException {
    hands.click("tool-RESIDUE").click("option-wall-to-wall").clickSlab(3000, 3000);
    assertThat(hands.area().marks().get(0).form().region(0.1).area()).isEqualTo(48e6);
  }

  @Test
  void a_distance_is_measured_and_changes_nothing() throws TimeoutException {
    var before = hands.site();
    hands.click("tool-MEASURE").clickSlab(0, 0).clickSlab(8000, 6000);
    assertThat(hands.standing()).startsWith("10.000 m");
    assertThat(hands.site()).isEqualTo(before);
  }

  @Test
  void alt_holds_snapping_off() throws TimeoutException {
    hands.click("tool-POWER").clickSlab(30, 25);
    assertThat(place(0)).isEqualTo(new Vec(0, 0));
    hands.with(KeyCode.ALT, () -> hands.clickSlab(7977, 5969));
    double pixel = DeskUnderTest.on(() -> 1 / hands.slab().viewport().scale());
    assertThat(place(1).distanceTo(new Vec(7977, 5969))).isCloseTo(0, within(1.5 * pixel));
    assertThat(place(1)).isNotEqualTo(new Vec(8000, 6000));
  }

  private Vec place(int mark) {
    return hands.area().marks().get(mark).form().spots().get(0).vec();
  }
}
