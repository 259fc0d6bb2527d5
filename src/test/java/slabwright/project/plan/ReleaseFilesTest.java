package slabwright.project.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.site.Site;
import slabwright.store.ReleaseArchive;
import slabwright.units.Result;
import slabwright.words.Words;

class ReleaseFilesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 12, 7);

  @TempDir Path folder;

  private Path plan;
  private Site site;
  private ReleaseFiles files;

  @BeforeEach
  void plan() throws IOException {
    plan = folder.resolve("shed.site.json");
    site = PlansOnDisk.withRing(folder);
    files = new ReleaseFiles(plan);
  }

  private Site issue(Site now) throws IOException {
    return ReleaseFiles.freeze(plan, now, "first", DAY).orThrow().edit().apply(now).orThrow();
  }

  private Optional<List<String>> since(int number, Site now) {
    return files.since(number, now).map(all -> all.stream().map(Words.english()::line).toList());
  }

  @Test
  void a_release_accepts_every_graphic_as_it_was_frozen() throws IOException {
    Site issued = issue(site);
    assertThat(PlansOnDisk.ring(issued).accepted()).isEqualTo(PlansOnDisk.hash(folder));
    assertThat(issued.releases())
        .singleElement()
        .satisfies(r -> assertThat(r.issued()).isEqualTo(DAY));
    assertThat(new ReleaseArchive(plan).read(1)).contains(issued);
  }

  @Test
  void a_number_whose_copy_lies_there_is_not_used_again() throws IOException {
    issue(site);
    assertThat(ReleaseFiles.freeze(plan, site, "", DAY).orThrow().number()).isEqualTo(2);
  }

  @Test
  void nothing_is_left_of_a_release_whose_graphic_is_missing() throws IOException {
    Files.delete(folder.resolve(PlansOnDisk.GRAPHIC));
    assertThatThrownBy(() -> issue(site)).isInstanceOf(NoSuchFileException.class);
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void nothing_has_changed_since_a_release_that_was_just_issued() throws IOException {
    assertThat(since(1, issue(site))).contains(List.of());
  }

  @Test
  void what_changed_is_told_with_graphics_on_disk() throws IOException {
    Site issued = issue(site);
    PlansOnDisk.draw(folder, "<svg/>");
    assertThat(since(1, issued.withNote("other")))
        .contains(
            List.of("Note under the site's name changed", "Graphic of \"Ring\" changed on disk"));
  }

  @Test
  void without_its_frozen_copy_nothing_can_be_told() {
    assertThat(since(1, site)).isEmpty();
  }

  @Test
  void a_graphic_is_read_again_only_after_a_recheck() throws IOException {
    Site issued = issue(site);
    assertThat(files.isChanged(PlansOnDisk.ring(issued))).isFalse();
    PlansOnDisk.draw(folder, "<svg/>");
    assertThat(files.isChanged(PlansOnDisk.ring(issued))).isFalse();
    files.recheck();
    assertThat(files.isChanged(PlansOnDisk.ring(issued))).isTrue();
  }

  @Test
  void a_graphic_that_was_written_anew_has_another_stamp() throws IOException {
    List<GraphicStamp> before = files.stamps(site);
    assertThat(files.stamps(site)).isEqualTo(before);
    PlansOnDisk.draw(folder, "<svg/>");
    assertThat(files.stamps(site)).isNotEqualTo(before);
    Files.delete(folder.resolve(PlansOnDisk.GRAPHIC));
    assertThat(files.stamps(site))
        .containsExactly(
            new GraphicStamp(folder.resolve(PlansOnDisk.GRAPHIC), Optional.empty(), 0));
  }

  @Test
  void accepting_takes_the_graphic_as_it_is_now() throws IOException {
    Site issued = issue(site);
    PlansOnDisk.draw(folder, "<svg/>");
    Site accepted =
        files
            .accept(issued.areas().get(0), PlansOnDisk.ring(issued))
            .flatMap(e -> e.apply(issued))
            .orThrow();
    assertThat(PlansOnDisk.ring(accepted).accepted()).isEqualTo(PlansOnDisk.hash(folder));
  }

  @Test
  void a_graphic_that_is_not_there_cannot_be_accepted() throws IOException {
    Files.delete(folder.resolve(PlansOnDisk.GRAPHIC));
    var refused = files.accept(site.areas().get(0), PlansOnDisk.ring(site));
    assertThat(((Result.Refused<?>) refused).message().key())
        .isEqualTo("project.plan.graphic-unreadable");
  }
}
