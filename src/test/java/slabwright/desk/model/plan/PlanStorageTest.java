package slabwright.desk.model.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskSettings;
import slabwright.project.plan.BackgroundWriter;
import slabwright.project.plan.PlanFiles;
import slabwright.site.Site;
import slabwright.site.edit.SiteEdit;
import slabwright.store.PlanFile;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.UnitSystem;

/**
 * Several hands on one plan, and disks that fail: nothing saved is lost, and the person is asked.
 */
class PlanStorageTest {
  @TempDir Path folder;

  private final BlockingQueue<Runnable> home = new LinkedBlockingQueue<>();
  private Path plan;
  private Window mine;
  private Window theirs;

  /** A desk on the plan, as a window has one. */
  private final class Window {
    private final Desk desk = new Desk();
    private final DeskSettings settings;
    private final BackgroundWriter writer = new BackgroundWriter("plan files", home::add);
    private final PlanStorage storage;
    private int askedElsewhere;

    Window(String name) {
      settings = new DeskSettings(folder.resolve(name + ".properties"));
      storage = new PlanStorage(desk, settings, folder.resolve("data"), writer);
      storage.onAskElsewhere(() -> askedElsewhere++);
      storage.open(plan, storage.read(plan).orThrow());
    }

    void rename(String name) {
      assertThat(desk.push(new SiteEdit.Rename(name)).isOk()).isTrue();
    }

    void save() {
      assertThat(storage.save()).isTrue();
      settle(this);
    }

    void choose(String key) {
      desk.choices().stream()
          .filter(c -> c.words().key().equals(key))
          .findFirst()
          .orElseThrow()
          .take()
          .run();
      settle(this);
    }

    void close() {
      storage.close();
      writer.close();
      settings.close();
    }
  }

  @BeforeEach
  void two_windows_on_one_plan() throws IOException {
    plan = Files.createDirectory(folder.resolve("job")).resolve("shed.site.json");
    PlanFile.save(Site.empty("Shed", UnitSystem.METRIC), plan);
    mine = new Window("mine");
    settle(mine); // it is the first to hold the plan
    theirs = new Window("theirs");
  }

  @AfterEach
  void close() {
    mine.close();
    theirs.close();
  }

  private void settle(Window w) {
    try {
      while (w.writer.isBusy()) {
        home.take().run();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private String saved() {
    return PlanFile.read(plan).orThrow().name();
  }

  private static List<String> asked(Window w) {
    assertThat(w.desk.refusal()).isPresent();
    return w.desk.choices().stream().map(c -> c.words().key()).toList();
  }

  @Test
  void a_plan_that_another_window_saved_is_left_and_the_person_is_asked() {
    theirs.rename("Theirs");
    theirs.save();
    mine.rename("Mine");
    mine.save();
    assertThat(saved()).isEqualTo("Theirs");
    assertThat(mine.desk.history().isSaved()).isFalse();
    assertThat(asked(mine))
        .containsExactly(
            "desk.model.plan-storage.elsewhere",
            "desk.model.plan-storage.read-theirs",
            "desk.model.plan-storage.keep-mine");
  }

  @Test
  void mine_is_kept_under_another_name_when_that_is_chosen() {
    theirs.rename("Theirs");
    theirs.save();
    mine.rename("Mine");
    mine.save();
    mine.choose("desk.model.plan-storage.elsewhere");
    assertThat(mine.askedElsewhere).isOne();
    Path other = plan.resolveSibling("mine.site.json");
    mine.storage.saveAs(other);
    settle(mine);
    assertThat(PlanFile.read(other).orThrow().name()).isEqualTo("Mine");
    assertThat(saved()).isEqualTo("Theirs");
    mine.rename("Mine again");
    mine.save();
    assertThat(PlanFile.read(other).orThrow().name()).isEqualTo("Mine again");
  }

  @Test
  void theirs_is_read_when_that_is_chosen_and_mine_is_one_undo_away() {
    theirs.rename("Theirs");
    theirs.save();
    mine.rename("Mine");
    mine.save();
    mine.choose("desk.model.plan-storage.read-theirs");
    assertThat(mine.desk.site().name()).isEqualTo("Theirs");
    assertThat(mine.desk.history().isSaved()).isTrue();
    mine.desk.undo();
    assertThat(mine.desk.site().name()).isEqualTo("Mine");
    mine.save();
    assertThat(saved()).isEqualTo("Mine");
  }

  @Test
  void a_change_is_found_whatever_the_clock_says() throws IOException {
    var before = Files.getLastModifiedTime(plan);
    PlanFile.save(Site.empty("Set back", UnitSystem.METRIC), plan);
    Files.setLastModifiedTime(plan, before);
    mine.rename("Mine");
    mine.save();
    assertThat(saved()).isEqualTo("Set back");
    assertThat(mine.desk.choices()).isNotEmpty();
  }

  @Test
  void a_plan_that_is_gone_is_written_again_only_when_that_is_chosen() throws IOException {
    Files.delete(plan);
    mine.rename("Mine");
    mine.save();
    assertThat(plan).doesNotExist();
    assertThat(asked(mine))
        .containsExactly("desk.model.plan-storage.elsewhere", "desk.model.plan-storage.save-there");
    mine.choose("desk.model.plan-storage.save-there");
    assertThat(saved()).isEqualTo("Mine");
    assertThat(mine.desk.history().isSaved()).isTrue();
  }

  @Test
  void a_place_that_can_not_be_written_to_is_told_with_another_to_choose() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "in the way");
    mine.rename("Mine");
    mine.storage.saveAs(file.resolve("shed.site.json"));
    settle(mine);
    assertThat(mine.desk.refusal().map(Refusal::message).map(Message::key))
        .contains("desk.model.plan-storage.not-saved");
    assertThat(asked(mine)).containsExactly("desk.model.plan-storage.elsewhere");
    assertThat(mine.desk.history().isSaved()).isFalse();
    assertThat(saved()).isEqualTo("Shed");
  }

  @Test
  void an_edit_made_while_the_plan_is_being_saved_is_not_taken_for_saved_and_stays_journalled() {
    mine.rename("First");
    assertThat(mine.storage.save()).isTrue();
    mine.rename("Second");
    settle(mine);
    assertThat(saved()).isEqualTo("First");
    assertThat(mine.desk.history().isSaved()).isFalse();
    assertThat(mine.storage.read(plan).orThrow().recovered().map(Site::name)).contains("Second");
    mine.save();
    assertThat(saved()).isEqualTo("Second");
    assertThat(mine.storage.read(plan).orThrow().recovered()).isEmpty();
  }

  @Test
  void closing_waits_until_the_plan_is_saved() {
    mine.rename("Last");
    assertThat(mine.storage.save()).isTrue();
    mine.close();
    assertThat(saved()).isEqualTo("Last");
    assertThat(mine.desk.history().isSaved()).isTrue();
  }

  @Test
  void a_plan_saved_again_before_the_first_saving_was_told_is_nobody_elses_work()
      throws InterruptedException {
    List<Runnable> untold = new ArrayList<>();
    mine.rename("Once");
    assertThat(mine.storage.save()).isTrue();
    while (!saved().equals("Once")) {
      untold.add(home.take());
    }
    mine.rename("Twice");
    assertThat(mine.storage.save()).isTrue();
    untold.forEach(Runnable::run);
    settle(mine);
    assertThat(mine.desk.choices()).isEmpty();
    assertThat(saved()).isEqualTo("Twice");
    assertThat(mine.desk.history().isSaved()).isTrue();
  }

  @Test
  void a_window_on_a_plan_that_is_open_in_another_is_told_and_the_first_is_not() {
    settle(mine);
    settle(theirs);
    assertThat(theirs.desk.announcement().map(Message::key))
        .contains("desk.model.plan-storage.open-elsewhere");
    assertThat(mine.desk.announcement()).isEmpty();
  }

  @Test
  void unsaved_work_of_two_windows_is_there_again_one_after_the_other() {
    mine.rename("Mine");
    theirs.rename("Theirs");
    mine.close();
    theirs.close();
    Set<String> back = new HashSet<>();
    for (String name : List.of("third", "fourth")) {
      Window again = new Window(name);
      settle(again);
      back.add(again.desk.site().name());
      Path other = plan.resolveSibling(name + ".site.json");
      again.storage.saveAs(other);
      settle(again);
      again.close();
    }
    assertThat(back).containsExactlyInAnyOrder("Mine", "Theirs");
    assertThat(PlanFiles.open(plan).orThrow().recovered()).isEmpty();
  }

  @Test
  void nothing_of_a_hold_is_left_beside_a_plan_that_is_closed() throws IOException {
    settle(mine);
    settle(theirs);
    mine.close();
    theirs.close();
    try (Stream<Path> all = Files.list(plan.getParent())) {
      assertThat(all).containsExactly(plan);
    }
  }

  @Test
  void a_plan_changed_by_another_window_is_noticed_when_one_looks_again_and_only_once() {
    mine.rename("Mine");
    theirs.rename("Theirs");
    theirs.save();
    mine.storage.recheck();
    settle(mine);
    assertThat(mine.desk.refusal().map(Refusal::message).map(Message::key))
        .contains("desk.model.plan-storage.changed-meanwhile");
    assertThat(asked(mine))
        .containsExactly(
            "desk.model.plan-storage.read-theirs", "desk.model.plan-storage.keep-mine");
    mine.desk.clearRefusal();
    mine.storage.recheck();
    settle(mine);
    assertThat(mine.desk.refusal()).isEmpty();
  }

  @Test
  void nothing_is_asked_when_one_looks_again_at_what_one_saved_oneself() {
    mine.rename("Mine");
    mine.save();
    mine.rename("Later");
    mine.storage.recheck();
    settle(mine);
    assertThat(mine.desk.refusal()).isEmpty();
  }

  @Test
  void mine_is_kept_and_theirs_lies_beside_it_in_a_file() {
    mine.rename("Mine");
    theirs.rename("Theirs");
    theirs.save();
    mine.storage.recheck();
    settle(mine);
    mine.choose("desk.model.plan-storage.keep-mine");
    assertThat(mine.desk.announcement().map(Message::key))
        .contains("desk.model.plan-storage.theirs-aside");
    mine.save();
    assertThat(mine.desk.choices()).isEmpty();
    assertThat(saved()).isEqualTo("Mine");
    Path aside = plan.resolveSibling("shed-other-1.site.json");
    assertThat(PlanFile.read(aside).orThrow().name()).isEqualTo("Theirs");
  }

  @Test
  void theirs_is_read_off_the_asking_thread() {
    theirs.rename("Theirs");
    theirs.save();
    mine.storage.recheck();
    settle(mine);
    mine.desk.choices().get(0).take().run();
    assertThat(mine.writer.isBusy()).isTrue();
    assertThat(mine.desk.site().name()).isEqualTo("Shed");
    settle(mine);
    assertThat(mine.desk.site().name()).isEqualTo("Theirs");
  }

  @Test
  void a_save_in_the_moment_of_a_save_as_goes_to_the_new_file() {
    Path other = plan.resolveSibling("other.site.json");
    mine.rename("First");
    mine.storage.saveAs(other);
    mine.rename("Second");
    assertThat(mine.storage.save()).isTrue();
    settle(mine);
    assertThat(saved()).isEqualTo("Shed");
    assertThat(PlanFile.read(other).orThrow().name()).isEqualTo("Second");
    assertThat(mine.desk.history().isSaved()).isTrue();
    mine.rename("Third");
    mine.save();
    assertThat(mine.desk.choices()).isEmpty();
    assertThat(PlanFile.read(other).orThrow().name()).isEqualTo("Third");
  }
}
