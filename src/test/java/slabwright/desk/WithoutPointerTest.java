package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;
import slabwright.desk.cards.CardColumn;
import slabwright.desk.model.PlanItem;
import slabwright.desk.tool.ToolName;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.Form;

/** Where keys lead, and what is placed by them. */
class WithoutPointerTest extends RoomOnDesk {
  @Test
  void tab_leads_from_the_plan_to_the_cards_and_shift_tab_back() throws TimeoutException {
    hands.press(KeyCode.TAB);
    assertThat(isOn(owner(), CardColumn.class)).as("on the cards").isTrue();
    hands.press(KeyCode.SHIFT, KeyCode.TAB);
    assertThat(slabHasTheKeys()).isTrue();
  }

  @Test
  void a_rim_says_that_tab_led_to_the_plan() throws TimeoutException {
    Color before = atTheRim();
    hands.press(KeyCode.TAB).press(KeyCode.SHIFT, KeyCode.TAB);
    // what lies over the plan is drawn soon, not at once
    WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> !atTheRim().equals(before));
    hands.press(KeyCode.TAB);
    WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> atTheRim().equals(before));
  }

  @Test
  void the_rim_stays_when_what_has_been_worked_out_is_shown() throws TimeoutException {
    hands.press(KeyCode.TAB).press(KeyCode.SHIFT, KeyCode.TAB);
    DeskUnderTest.on(
        () -> {
          desk.room().refreshNow();
          return null;
        });
    assertThat(DeskUnderTest.on(() -> hands.slab().isFocusVisible())).isTrue();
  }

  private Color atTheRim() {
    return DeskUnderTest.on(
        () -> hands.slab().snapshot(null, null).getPixelReader().getColor(1, 300));
  }

  @Test
  void tab_leads_to_the_cards_in_a_narrow_window_too() throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          desk.stage().setWidth(1000);
          return null;
        });
    desk.settle();
    hands.press(KeyCode.TAB);
    assertThat(isOn(owner(), CardColumn.class)).as("on the cards").isTrue();
  }

  @Test
  void a_button_that_goes_with_what_it_did_gives_the_keys_back() throws TimeoutException {
    hands.press(KeyCode.DIGIT1).press(KeyCode.T);
    for (String wall : List.of("40'", "l 27'", "l 30'", "l 15'", "r 10'", "l 11'")) {
      hands.line(wall);
    }
    hands.press(KeyCode.ENTER).tabTo("take-2").press(KeyCode.SPACE);
    assertThat(desk.node("take-2")).isNull();
    assertThat(slabHasTheKeys()).isTrue();
  }

  @Test
  void a_doorway_is_set_into_the_wall_nearest_to_a_typed_place() throws TimeoutException {
    hands.press(KeyCode.DIGIT1).press(KeyCode.W).line("1 m").line("8 m, 2 m");
    Doorway made = hands.area().doorways().get(0);
    assertThat(made.piece()).isEqualTo(1);
    assertThat(made.offset().mm()).isEqualTo(1500);
    hands.line("4 m, 3 m");
    assertThat(hands.area().doorways()).hasSize(1);
    assertThat(((Labeled) desk.node("entry-wrong")).getText()).startsWith("No wall lies within");
  }

  @Test
  void a_place_at_the_left_of_zero_is_typed_with_its_sign() throws TimeoutException {
    double before = DeskUnderTest.on(() -> hands.slab().viewport().scale());
    hands.press(KeyCode.DIGIT1).press(KeyCode.W).line("-300 mm, 3 m");
    assertThat(hands.area().doorways()).hasSize(1);
    assertThat(hands.area().doorways().get(0).piece()).isEqualTo(3);
    assertThat(DeskUnderTest.on(() -> hands.slab().viewport().scale())).isEqualTo(before);
    hands.press(KeyCode.ESCAPE).press(KeyCode.DIGIT2).press(KeyCode.T).line("-1 m, 1 m");
    hands.press(KeyCode.RIGHT).line("3 m").press(KeyCode.ENTER);
    Form.Strip trench = (Form.Strip) hands.area().marks().get(0).form();
    assertThat(trench.spots().get(0).vec()).isEqualTo(new Vec(-1000, 1000));
  }

  @Test
  void a_wall_is_picked_by_keys_and_made_longer_on_its_card() throws TimeoutException {
    hands.press(KeyCode.DIGIT1).press(KeyCode.PAGE_DOWN).press(KeyCode.PAGE_DOWN);
    assertThat(picked()).containsExactly(new PlanItem.OfWall(0));
    hands.tabTo("wall-length").press(KeyCode.SHORTCUT, KeyCode.A).line("9 m");
    assertThat(hands.corners()).contains(new Vec(9000, 0));
    hands.press(KeyCode.PAGE_UP);
    assertThat(picked()).containsExactly(new PlanItem.OfCorner(0));
  }

  @Test
  void a_key_leads_to_the_next_floor_area_and_round() throws TimeoutException {
    hands.press(KeyCode.DIGIT1).press(KeyCode.T).line("20 m, 0 m");
    hands.line("3 m").line("l 2 m").line("l 3 m").line("l 2 m").press(KeyCode.ENTER);
    assertThat(looked()).isEqualTo("a2");
    hands.press(KeyCode.SHORTCUT, KeyCode.F6);
    assertThat(looked()).isEqualTo("a1");
    hands.press(KeyCode.SHORTCUT, KeyCode.F6);
    assertThat(looked()).isEqualTo("a2");
  }

  @Test
  void esc_gives_the_keys_to_the_page_where_pages_are_looked_at() throws TimeoutException {
    hands.press(KeyCode.DIGIT6);
    desk.settleAll();
    hands.tabTo("paper").press(KeyCode.ESCAPE);
    assertThat(DeskUnderTest.on(() -> desk.node("page").isFocused())).isTrue();
    hands.press(KeyCode.DIGIT1);
    assertThat(slabHasTheKeys()).isTrue();
    hands.press(KeyCode.W);
    assertThat(DeskUnderTest.on(() -> desk.room().tools().name())).isEqualTo(ToolName.DOORWAY);
  }

  private String looked() {
    return DeskUnderTest.on(() -> desk.room().bench().focus().area().orElseThrow().id());
  }

  private Node owner() {
    return DeskUnderTest.on(() -> desk.stage().getScene().getFocusOwner());
  }

  private boolean slabHasTheKeys() {
    return DeskUnderTest.on(() -> hands.slab().isFocused());
  }

  private static boolean isOn(Node node, Class<? extends Node> sort) {
    return node != null && (sort.isInstance(node) || isOn(node.getParent(), sort));
  }
}
