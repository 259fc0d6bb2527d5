package slabwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import slabwright.site.Site;
import slabwright.site.edit.SiteEdit;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

class AsideStepsTest {
  private final Desk desk = new Desk();
  private final List<String> said = new ArrayList<>();

  @BeforeEach
  void open() {
    desk.open(Site.empty("Hall", UnitSystem.METRIC), Optional.empty());
  }

  private void beside(String what) {
    desk.changedBeside(
        Message.of("desk.model.shop-book.step"),
        () -> said.add("-" + what),
        () -> said.add("+" + what));
  }

  private void rename(String name) {
    desk.push(new SiteEdit.Rename(name));
  }

  @Test
  void steps_beside_the_plan_and_edits_of_it_are_undone_in_the_order_they_were_done() {
    beside("a");
    rename("Shed");
    beside("b");
    beside("c");
    desk.undo();
    desk.undo();
    assertThat(said).containsExactly("-c", "-b");
    assertThat(desk.site().name()).isEqualTo("Shed");
    desk.undo();
    assertThat(desk.site().name()).isEqualTo("Hall");
    desk.undo();
    assertThat(said).containsExactly("-c", "-b", "-a");
    assertThat(desk.undoName()).isEmpty();
    for (int i = 0; i < 4; i++) {
      desk.redo();
    }
    assertThat(said).containsExactly("-c", "-b", "-a", "+a", "+b", "+c");
    assertThat(desk.site().name()).isEqualTo("Shed");
    assertThat(desk.redoName()).isEmpty();
  }

  @Test
  void what_was_taken_back_is_not_done_again_after_another_edit() {
    beside("a");
    desk.undo();
    rename("Shed");
    assertThat(desk.redoName()).isEmpty();
    desk.undo();
    desk.redo();
    assertThat(said).containsExactly("-a");
    assertThat(desk.site().name()).isEqualTo("Shed");
  }

  @Test
  void another_plan_takes_nothing_back_beside_the_last_one() {
    beside("a");
    desk.open(Site.empty("Hall", UnitSystem.METRIC), Optional.empty());
    desk.undo();
    assertThat(said).isEmpty();
  }
}
