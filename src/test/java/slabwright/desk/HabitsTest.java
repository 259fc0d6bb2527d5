package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import slabwright.desk.model.PlanItem;
import slabwright.site.Mark;
import slabwright.site.edit.MarkEdit;

/** What people expect of any desktop program. */
class HabitsTest extends RoomOnDesk {
  @Override
  List<Mark> marks() {
    return List.of(
        island("one", 1000, 1000, 400, 400),
        island("two", 3000, 2000, 600, 400),
        island("three", 6500, 3500, 400, 400));
  }

  private List<String> shownKeys() {
    return DeskUnderTest.on(
        () ->
            desk.node("key-list").lookupAll(".key-line .label").stream()
                .map(n -> ((Label) n).getText())
                .toList());
  }

  private void run(String command) throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          desk.room().commands().run(command);
          return null;
        });
    desk.settle();
  }

  private String notice() {
    return DeskUnderTest.on(() -> ((Labeled) desk.node("notice-words")).getText());
  }

  @Test
  void f1_lists_all_keys_and_a_word_or_a_key_finds_one() throws TimeoutException {
    hands.press(KeyCode.F1);
    assertThat(shownKeys()).contains("Save", "Trench, at Mark", "One step back");
    hands.type("dupl");
    assertThat(shownKeys()).hasSize(2).contains("Duplicate");
    hands.press(KeyCode.ESCAPE);
    assertThat(DeskUnderTest.on(() -> DeskGestures.shows(desk.node("key-list")))).isFalse();
    assertThat(DeskUnderTest.on(() -> hands.slab().isFocused())).isTrue();
  }

  @Test
  void picked_marks_are_lined_up_and_spaced_evenly_one_undo_each() throws TimeoutException {
    hands.press(KeyCode.SHORTCUT, KeyCode.A);
    var before = hands.area().marks();
    run("line-feet");
    assertThat(hands.area().marks())
        .allSatisfy(m -> assertThat(m.form().region(0.1).bounds().minY()).isEqualTo(800));
    run("space-across");
    var middle = hands.area().marks().get(1).form().region(0.1).bounds();
    var first = hands.area().marks().get(0).form().region(0.1).bounds();
    var last = hands.area().marks().get(2).form().region(0.1).bounds();
    assertThat(middle.minX() - first.maxX()).isEqualTo(last.minX() - middle.maxX());
    hands.press(KeyCode.SHORTCUT, KeyCode.Z).press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.area().marks()).isEqualTo(before);
  }

  @Test
  void too_few_to_line_up_and_a_wall_to_delete_are_answered_in_words() throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          desk.room().bench().focus().select(new PlanItem.OfMark("one"));
          return null;
        });
    run("line-left");
    assertThat(notice()).startsWith("Pick at least 2 marks or graphics first");
    DeskUnderTest.on(
        () -> {
          desk.room().bench().focus().select(new PlanItem.OfWall(1));
          return null;
        });
    hands.press(KeyCode.DELETE);
    assertThat(notice()).startsWith("A wall can’t be taken away by itself");
    assertThat(hands.area().outline()).hasSize(4);
  }

  @Test
  void the_first_screen_says_when_a_plan_was_changed_and_what_was_left_of_one()
      throws TimeoutException, IOException {
    DeskUnderTest.on(
        () -> {
          desk.room().plans().startByTape();
          desk.room().plans().closePlan();
          return null;
        });
    Path left = Files.createDirectories(data.resolve("left"));
    Path plan = TestSites.withTrench(left);
    DeskUnderTest.on(
        () -> {
          desk.room().plans().openPlan(plan);
          return null;
        });
    desk.settle();
    DeskUnderTest.on(
        () -> desk.room().bench().desk().push(new MarkEdit.Remove("a1", Set.of("m1"))));
    desk.settle();
    run("close");
    List<String> said =
        DeskUnderTest.on(
            () ->
                desk.stage().getScene().getRoot().lookupAll(".resume-folder").stream()
                    .map(n -> ((Label) n).getText())
                    .toList());
    assertThat(said).anyMatch(s -> s.equals("Tram shed: 1 floor area, no marks"));
    assertThat(said).anyMatch(s -> s.startsWith("not saved, last edit "));
    assertThat(said).anyMatch(s -> s.startsWith("last changed "));
  }

  @Test
  void what_is_picked_is_repeated_at_a_distance_as_one_step() throws TimeoutException {
    hands.clickSlab(1000, 1000);
    hands.fill("repeat-times", "3").fill("repeat-right", "1500 mm").click("repeat-do");
    assertThat(hands.area().marks()).hasSize(6);
    assertThat(hands.area().marks().get(5).form().region(0.1).bounds().middle().x())
        .isEqualTo(5500);
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.area().marks()).hasSize(3);
    hands.clickSlab(1000, 1000).fill("repeat-right", "0").click("repeat-do");
    assertThat(notice()).startsWith("Say how far");
  }
}
