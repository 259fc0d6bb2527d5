package slabwright.project.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.words.Words;

class JournalWriterTest {
  @TempDir Path folder;

  private final List<Message> faults = new CopyOnWriteArrayList<>();

  private PlanLocation plan() {
    return PlanLocation.file(folder.resolve("shed.site.json"));
  }

  @Test
  void once_closed_the_last_state_is_on_disk() throws IOException {
    Site last = PlansOnDisk.shed();
    try (BackgroundWriter files = new BackgroundWriter("test", Runnable::run)) {
      JournalWriter writer = new JournalWriter(files, faults::add);
      for (int i = 0; i < 5; i++) {
        last = last.withNote("edit " + i);
        writer.write(plan(), last);
      }
    }
    assertThat(plan().journal().recover()).contains(last);
    assertThat(faults).isEmpty();
  }

  @Test
  void the_state_before_is_on_disk_when_the_next_is_handed_over() throws IOException {
    try (BackgroundWriter files = new BackgroundWriter("test", Runnable::run)) {
      JournalWriter writer = new JournalWriter(files, faults::add);
      writer.write(plan(), PlansOnDisk.shed());
      writer.write(PlanLocation.untitled(folder.resolve("other")), PlansOnDisk.shed());
      assertThat(plan().journal().recover()).contains(PlansOnDisk.shed());
    }
  }

  @Test
  void a_cleared_journal_is_gone() {
    try (BackgroundWriter files = new BackgroundWriter("test", Runnable::run)) {
      JournalWriter writer = new JournalWriter(files, faults::add);
      writer.write(plan(), PlansOnDisk.shed());
      writer.clear(plan());
      writer.keepOnly(Optional.empty());
    }
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void each_of_two_windows_has_a_journal_of_its_own_and_neither_takes_the_others_for_left_behind()
      throws IOException {
    Site mine = PlansOnDisk.shed().withNote("mine");
    Site theirs = PlansOnDisk.shed().withNote("theirs");
    PlanFiles.save(PlansOnDisk.shed(), Optional.empty(), plan().plan());
    List<String> told = new CopyOnWriteArrayList<>();
    try (BackgroundWriter files = new BackgroundWriter("test", Runnable::run)) {
      JournalWriter first = new JournalWriter(files, faults::add);
      JournalWriter second = new JournalWriter(files, faults::add);
      first.hold(plan(), 1, () -> told.add("first"));
      first.write(plan(), mine);
      files.await(plan().journal(), 5_000);
      assertThat(PlanFiles.open(plan().plan()).orThrow().recovered()).isEmpty();
      assertThat(PlanFiles.open(plan().plan()).orThrow().journal()).isEqualTo(2);
      assertThat(PlanFiles.open(plan().plan(), first).orThrow().recovered()).contains(mine);
      second.hold(plan(), 2, () -> told.add("second"));
      second.write(plan(), theirs);
      files.await(plan().journal(), 5_000);
      assertThat(told).containsExactly("second");
      assertThat(plan().journal().recover()).contains(mine);
      assertThat(plan().journal().numbered(2).recover()).contains(theirs);
      first.keepOnly(Optional.empty());
      second.keepOnly(Optional.empty());
    }
    assertThat(PlanFiles.open(plan().plan()).orThrow().recovered()).contains(mine);
    PlanLocation.file(plan().plan()).journal().clear();
    OpenedPlan next = PlanFiles.open(plan().plan()).orThrow();
    assertThat(next.recovered()).contains(theirs);
    assertThat(next.journal()).isEqualTo(2);
    assertThat(faults).isEmpty();
  }

  @Test
  void a_folder_that_is_gone_is_told_and_not_made_anew_for_a_journal_alone() {
    PlanLocation gone = PlanLocation.file(folder.resolve("stick").resolve("shed.site.json"));
    try (BackgroundWriter files = new BackgroundWriter("test", Runnable::run)) {
      new JournalWriter(files, faults::add).write(gone, PlansOnDisk.shed());
    }
    assertThat(faults).extracting(Message::key).containsExactly("project.plan.journal-not-written");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void a_folder_that_cannot_be_made_is_told() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "in the way");
    try (BackgroundWriter files = new BackgroundWriter("test", Runnable::run)) {
      JournalWriter writer = new JournalWriter(files, faults::add);
      writer.write(PlanLocation.untitled(file), PlansOnDisk.shed());
    }
    assertThat(faults)
        .singleElement()
        .satisfies(
            m ->
                assertThat(Words.english().say(m))
                    .startsWith("The journal could not be written (")
                    .endsWith("); save the plan now."));
  }
}
