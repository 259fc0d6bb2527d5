package slabwright.project.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.project.TaskProgress;
import slabwright.words.Words;

class StagedFilesTest {
  @TempDir Path folder;

  private static StagedFiles three() {
    StagedFiles files = new StagedFiles();
    files.add("a.txt", "one");
    files.add("b/c.txt", "two");
    files.add("d.txt", "three");
    return files;
  }

  /** Gives up once so much is done. */
  private static TaskProgress until(double limit) {
    return new TaskProgress() {
      @Override
      public void report(double share) {
        if (share > limit) {
          throw new CancellationException();
        }
      }

      @Override
      public boolean isCancelled() {
        return false;
      }
    };
  }

  @Test
  void all_files_come_to_their_names() throws IOException {
    three().write(folder.resolve("out"), until(1), 0);
    assertThat(folder.resolve("out")).isDirectoryRecursivelyContaining("glob:**c.txt");
    assertThat(folder.resolve("out").resolve("d.txt")).hasContent("three");
    try (var all = Files.list(folder.resolve("out"))) {
      assertThat(all).hasSize(3);
    }
  }

  @Test
  void files_that_are_written_over_are_counted() throws IOException {
    assertThat(three().write(folder, until(1), 0)).isZero();
    Files.delete(folder.resolve("a.txt"));
    assertThat(three().write(folder, until(1), 0)).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "57 | 12 | Saved 57 files in out, 12 of them in place of older ones",
        "57 | 57 | Saved 57 files in out, all of them in place of older ones",
        "57 |  1 | Saved 57 files in out, 1 of them in place of an older one",
        "57 |  0 | Saved 57 files in out",
        " 1 |  1 | Saved plan.pdf in out, in place of an older one",
        " 1 |  0 | Saved plan.pdf in out",
      })
  void what_was_saved_is_told_with_what_it_took_the_place_of(
      int files, int replaced, String words) {
    List<String> names = Collections.nCopies(files, "plan.pdf");
    assertThat(
            Words.english().say(new SavedFiles(names, replaced, List.of()).message(Path.of("out"))))
        .isEqualTo(words);
  }

  @Test
  void given_up_half_way_nothing_is_left() throws IOException {
    assertThatThrownBy(() -> three().write(folder.resolve("out"), until(0.5), 0))
        .isInstanceOf(CancellationException.class);
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void given_up_half_way_what_was_there_stays() throws IOException {
    Files.writeString(folder.resolve("a.txt"), "old");
    assertThatThrownBy(() -> three().write(folder, until(0.5), 0))
        .isInstanceOf(CancellationException.class);
    assertThat(folder.resolve("a.txt")).hasContent("old");
    try (var all = Files.list(folder)) {
      assertThat(all).hasSize(1);
    }
  }
}
