package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.store.Journal;
import slabwright.store.PlanFile;
import slabwright.words.Words;

/** The plans that the first screen lists, while their files come slowly. */
class PlansToGoOnWithTest {
  @TempDir Path data;

  private final Brake brake = new Brake("plan-list");

  private DeskUnderTest open(String... plans) throws TimeoutException {
    SystemServices outside =
        new SystemServices(
            new FixedChooser(data), new NoPrinter(), f -> {}, brake, Words.english());
    return DeskUnderTest.open(data, 1280, 800, List.of(plans), outside);
  }

  private static boolean lists(DeskUnderTest desk, String id) {
    return DeskUnderTest.on(
        () -> {
          Node row = desk.node(id);
          return row != null && DeskGestures.shows(row);
        });
  }

  @Test
  void the_window_waits_for_no_file_and_lists_no_plan_as_it_was_before_another_was_open()
      throws TimeoutException, IOException {
    Path plan = TestSites.shed(data);
    try (DeskUnderTest desk = open(plan.toString())) {
      brake.set(true);
      DeskUnderTest.on(
          () -> {
            desk.room().plans().closePlan();
            return null;
          });
      desk.laidOut();
      assertThat(lists(desk, "start-tape")).isTrue();
      assertThat(lists(desk, "recent-1")).isFalse();
      brake.set(false);
      desk.settle();
      assertThat(lists(desk, "recent-1")).isTrue();
      new DeskGestures(desk).click("recent-1");
      brake.set(true);
      DeskUnderTest.on(
          () -> {
            desk.room().plans().closePlan();
            return null;
          });
      desk.laidOut();
      assertThat(lists(desk, "recent-1")).isFalse();
      brake.set(false);
      desk.settle();
    }
  }

  @Test
  void work_that_is_saved_already_is_not_listed_as_unsaved() throws TimeoutException, IOException {
    Path plan = TestSites.shed(data);
    open(plan.toString()).close();
    Journal.beside(plan).write(PlanFile.read(plan).orThrow());
    try (DeskUnderTest desk = open()) {
      assertThat(lists(desk, "recent-1")).isTrue();
      assertThat(lists(desk, "left-1")).isFalse();
    }
  }
}
