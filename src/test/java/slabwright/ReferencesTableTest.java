package slabwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** docs/references.md: each row names a value, its source and the test that asserts it. */
class ReferencesTableTest {
  private static final Pattern NAME = Pattern.compile("`([A-Z][A-Za-z0-9]+)`");

  /** A row of the page; the last cell names tests. */
  record Row(String value, String source, String test) {
    static Row of(String line) {
      String[] cells = line.split("\\|", -1);
      return new Row(cells[1].strip(), cells[2].strip(), cells[3].strip());
    }

    List<String> tests() {
      return NAME.matcher(test).results().map((MatchResult r) -> r.group(1)).toList();
    }
  }

  private static List<Row> rows() throws IOException {
    return Files.readAllLines(Path.of("docs/references.md")).stream()
        .filter(l -> l.startsWith("| ") && !l.startsWith("| value") && !l.startsWith("| what"))
        .map(Row::of)
        .toList();
  }

  private static Set<String> classesWithTests() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      return files
          .filter(f -> f.toString().endsWith(".java"))
          .filter(f -> read(f).contains("assert"))
          .map(f -> f.getFileName().toString().replace(".java", ""))
          .collect(Collectors.toSet());
    }
  }

  private static String read(Path f) {
    try {
      return Files.readString(f);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void each_row_has_a_value_and_a_source() throws IOException {
    assertThat(rows())
        .hasSizeGreaterThan(80)
        .allMatch(r -> !r.value().isEmpty() && !r.source().isEmpty());
  }

  @Test
  void each_row_names_a_test() throws IOException {
    assertThat(rows()).filteredOn(r -> r.tests().isEmpty()).isEmpty();
  }

  @Test
  void each_named_test_exists_and_asserts() throws IOException {
    Set<String> there = classesWithTests();
    assertThat(rows())
        .flatExtracting(Row::tests)
        .filteredOn(t -> !there.contains(t))
        .as("named in docs/references.md, but no class of the tests that asserts anything")
        .isEmpty();
  }
}
