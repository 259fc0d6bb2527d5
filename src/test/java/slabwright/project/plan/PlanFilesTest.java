package slabwright.project.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.site.Site;
import slabwright.store.PlanFile;
import slabwright.store.ReleaseArchive;
import slabwright.units.Result;
import slabwright.words.Words;

class PlanFilesTest {
  @TempDir Path folder;

  private PlanFiles files;
  private Path plan;

  @BeforeEach
  void data() {
    files = new PlanFiles(folder.resolve("data"));
    plan = folder.resolve("work").resolve("shed.site.json");
  }

  private static String refusal(Result<?> result) {
    return Words.english().say(((Result.Refused<?>) result).message());
  }

  @Test
  void a_plan_that_was_saved_opens_as_it_was() throws IOException {
    PlanFiles.save(PlansOnDisk.shed(), Optional.empty(), plan);
    assertThat(PlanFiles.open(plan))
        .isEqualTo(
            Result.ok(
                new OpenedPlan(
                    PlansOnDisk.shed(),
                    Optional.empty(),
                    1,
                    Optional.of(PlanFiles.stamp(PlansOnDisk.shed())))));
  }

  @Test
  void what_a_crash_left_beside_a_plan_comes_with_it() throws IOException {
    PlanFiles.save(PlansOnDisk.shed(), Optional.empty(), plan);
    Site later = PlansOnDisk.shed().withNote("later");
    PlanLocation.file(plan).journal().write(later);
    assertThat(PlanFiles.open(plan).orThrow())
        .isEqualTo(
            new OpenedPlan(
                PlansOnDisk.shed(),
                Optional.of(later),
                1,
                Optional.of(PlanFiles.stamp(PlansOnDisk.shed()))));
  }

  @Test
  void a_journal_of_what_is_saved_recovers_nothing() throws IOException {
    PlanFiles.save(PlansOnDisk.shed(), Optional.empty(), plan);
    PlanLocation.file(plan).journal().write(PlansOnDisk.shed());
    assertThat(PlanFiles.open(plan).orThrow().recovered()).isEmpty();
  }

  @Test
  void a_file_that_is_no_plan_is_refused_by_its_name() throws IOException {
    Files.createDirectories(plan.getParent());
    Files.writeString(plan, "no plan");
    assertThat(refusal(PlanFiles.open(plan))).startsWith("shed.site.json: ");
  }

  @Test
  void only_the_first_fault_is_told_with_how_many_more() throws IOException {
    String twice = PlanFile.write(PlansOnDisk.shed()).replace("\"id\" : \"a1\"", "\"id\" : 1");
    assertThat(twice).contains("\"id\" : 1");
    Files.createDirectories(plan.getParent());
    Files.writeString(plan, twice.replace("\"name\" : \"Shed\"", "\"name\" : 2"));
    Result<OpenedPlan> read = PlanFiles.open(plan);
    assertThat(((Result.Refused<OpenedPlan>) read).refusals()).hasSize(1);
    assertThat(refusal(read)).matches("(?s).*\\(and [1-9] more\\)");
  }

  @Test
  void an_untitled_plan_comes_back_from_its_journal() throws IOException {
    PlanLocation at = files.fresh(LocalDateTime.of(2026, 12, 7, 7, 30));
    at.journal().write(PlansOnDisk.shed());
    assertThat(PlanFiles.recover(at.folder())).isEqualTo(Result.ok(PlansOnDisk.shed()));
  }

  @Test
  void a_journal_that_cannot_be_read_is_left_alone() throws IOException {
    PlanLocation at = files.fresh(LocalDateTime.of(2026, 12, 7, 7, 30));
    Files.createDirectories(at.folder());
    Files.writeString(at.journal().file(), "half");
    assertThat(refusal(PlanFiles.recover(at.folder())))
        .isEqualTo("The journal in " + at.folder() + " cannot be read; it was left alone.");
    assertThat(at.journal().file()).hasContent("half");
  }

  @Test
  void saved_plans_with_a_journal_and_then_untitled_ones_latest_first_can_be_recovered()
      throws IOException {
    Path clean = plan.resolveSibling("clean.site.json");
    PlanLocation early = files.fresh(LocalDateTime.of(2026, 12, 6, 7, 30));
    PlanLocation late = files.fresh(LocalDateTime.of(2026, 12, 7, 7, 30));
    for (PlanLocation at : List.of(early, late, PlanLocation.file(plan))) {
      at.journal().write(PlansOnDisk.shed());
    }
    try (BackgroundWriter quiet = new BackgroundWriter("test", Runnable::run)) {
      JournalWriter own = new JournalWriter(quiet, m -> {});
      assertThat(files.recoverable(List.of(clean, plan), own))
          .extracting(PlanFiles.LeftPlan::plan)
          .containsExactly(plan, late.folder(), early.folder());
    }
  }

  @Test
  void work_that_is_saved_already_is_not_listed_and_never_passes_for_newer_than_what_others_save()
      throws IOException {
    PlanFiles.save(PlansOnDisk.shed(), Optional.empty(), plan);
    PlanLocation.file(plan).journal().write(PlansOnDisk.shed());
    try (BackgroundWriter quiet = new BackgroundWriter("test", Runnable::run)) {
      assertThat(files.recoverable(List.of(plan), new JournalWriter(quiet, m -> {}))).isEmpty();
    }
    PlanFile.save(PlansOnDisk.shed().withNote("theirs"), plan);
    assertThat(PlanFiles.open(plan).orThrow().recovered()).isEmpty();
    assertThat(plan.getParent()).isDirectoryNotContaining("glob:**.lock");
  }

  @Test
  void work_beyond_what_is_saved_is_listed_behind_a_journal_that_is_not() throws IOException {
    PlanFiles.save(PlansOnDisk.shed(), Optional.empty(), plan);
    Site later = PlansOnDisk.shed().withNote("later");
    PlanLocation.file(plan).journal().write(PlansOnDisk.shed());
    PlanLocation.file(plan).journal().numbered(2).write(later);
    try (BackgroundWriter quiet = new BackgroundWriter("test", Runnable::run)) {
      assertThat(files.recoverable(List.of(plan), new JournalWriter(quiet, m -> {})))
          .singleElement()
          .satisfies(l -> assertThat(l.work().orElseThrow().site()).isEqualTo(later));
    }
  }

  @Test
  void graphics_and_frozen_releases_go_along_to_another_folder() throws IOException {
    PlanLocation at = files.fresh(LocalDateTime.of(2026, 12, 7, 7, 30));
    Site site = PlansOnDisk.withRing(at.folder());
    FrozenRelease first =
        ReleaseFiles.freeze(at.plan(), site, "", LocalDate.of(2026, 12, 7)).orThrow();
    Site issued = first.edit().apply(site).orThrow();
    PlanFiles.save(issued, Optional.of(at), plan);
    assertThat(plan.resolveSibling(PlansOnDisk.GRAPHIC)).exists();
    assertThat(new ReleaseArchive(plan).read(1)).contains(issued);
  }

  @Test
  void a_graphic_that_is_there_already_is_kept() throws IOException {
    PlanLocation at = files.fresh(LocalDateTime.of(2026, 12, 7, 7, 30));
    Site site = PlansOnDisk.withRing(at.folder());
    PlansOnDisk.draw(plan.getParent(), "theirs");
    PlanFiles.save(site, Optional.of(at), plan);
    assertThat(plan.resolveSibling(PlansOnDisk.GRAPHIC)).hasContent("theirs");
  }

  @Test
  void a_plan_begun_at_the_moment_of_another_gets_a_place_of_its_own() throws IOException {
    PlanFiles files = new PlanFiles(folder);
    LocalDateTime now = LocalDateTime.of(2026, 11, 25, 9, 0);
    Path first = Files.createDirectories(files.fresh(now).folder());
    assertThat(files.fresh(now).folder()).isNotEqualTo(first);
  }
}
