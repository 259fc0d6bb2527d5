package slabwright.project.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.project.RefusedInput;

class OutFolderTest {
  @TempDir Path folder;

  private static void write(Path to, String name, String text) throws IOException, RefusedInput {
    OutFolder out = new OutFolder(to);
    out.add(name, text);
    out.commit();
  }

  @Test
  void what_is_no_longer_made_is_removed_and_what_others_made_stays() throws Exception {
    Path to = folder.resolve("o");
    write(to, "a.txt", "1");
    Files.writeString(to.resolve("mine.txt"), "keep");
    write(to, "b.txt", "2");
    assertThat(to.resolve("a.txt")).doesNotExist();
    assertThat(to.resolve("b.txt")).hasContent("2");
    assertThat(to.resolve("mine.txt")).hasContent("keep");
  }

  @Test
  void a_file_of_somebody_else_is_never_replaced() throws Exception {
    Path to = Files.createDirectory(folder.resolve("o"));
    Files.writeString(to.resolve("a.txt"), "theirs");
    assertThatThrownBy(() -> write(to, "a.txt", "ours")).isInstanceOf(RefusedInput.class);
    assertThat(to.resolve("a.txt")).hasContent("theirs");
  }

  @Test
  void a_file_that_only_has_the_manifests_name_is_not_replaced() throws Exception {
    Path to = Files.createDirectory(folder.resolve("o"));
    Files.writeString(to.resolve(OutFolder.MANIFEST), "my own list\na.txt\n");
    assertThatThrownBy(() -> write(to, "a.txt", "ours")).isInstanceOf(RefusedInput.class);
    assertThat(to.resolve(OutFolder.MANIFEST)).hasContent("my own list\na.txt\n");
  }

  @Test
  void a_link_in_the_folder_is_never_written_through() throws Exception {
    Path to = Files.createDirectory(folder.resolve("o"));
    Path secret = Files.writeString(folder.resolve("secret"), "secret");
    Files.writeString(to.resolve(OutFolder.MANIFEST), OutFolder.HEADER + "\na.txt\n");
    Files.createSymbolicLink(to.resolve("a.txt"), secret);
    assertThatThrownBy(() -> write(to, "a.txt", "ours")).isInstanceOf(RefusedInput.class);
    assertThat(secret).hasContent("secret");
  }

  @Test
  void a_manifest_that_names_a_file_elsewhere_removes_nothing_there() throws Exception {
    Path to = Files.createDirectory(folder.resolve("o"));
    Path secret = Files.writeString(folder.resolve("secret"), "secret");
    Files.writeString(
        to.resolve(OutFolder.MANIFEST), OutFolder.HEADER + "\n../secret\n" + secret + "\n");
    write(to, "a.txt", "ours");
    assertThat(secret).exists();
  }

  @Test
  void nothing_is_left_beside_the_folder() throws Exception {
    write(folder.resolve("o"), "sub/a.txt", "1");
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all.map(p -> p.getFileName().toString())).containsExactly("o");
    }
  }

  @Test
  void a_file_in_the_folders_place_is_refused() throws Exception {
    Path file = Files.writeString(folder.resolve("o"), "x");
    assertThatThrownBy(() -> write(file, "a.txt", "1")).isInstanceOf(RefusedInput.class);
    assertThat(file).hasContent("x");
  }

  @ParameterizedTest
  @ValueSource(strings = {"../a", "/a", "a/b/c", ".a", "a b", ""})
  void a_name_that_is_not_clean_is_a_fault_of_ours(String name) {
    OutFolder out = new OutFolder(folder.resolve("o"));
    assertThatThrownBy(() -> out.add(name, "x")).isInstanceOf(IllegalArgumentException.class);
  }
}
