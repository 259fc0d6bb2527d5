package slabwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** docs/references.md: each row names a value, its source and the test that asserts it. */
class ReferencesTableTest {
  private static final Pattern NAME = Pattern.compile("`([A-Z][A-Za-z0-9]+)(?:#([a-z0-9_]+))?`");
  private static final Pattern FIGURE = Pattern.compile("\\d+(?:\\.\\d+)?");

  /** Groups of three digits are parted by a space or comma on the page. */
  private static final Pattern PARTED =
      Pattern.compile("(?<=\\d)[\\s\u00a0\u2009\u202f,](?=\\d{3}(?!\\d))");

  /** A row of the page; the last cell names tests. */
  record Row(String value, String source, String test) {
    static Row of(String line) {
      String[] cells = line.split("\\|", -1);
      return new Row(cells[1].strip(), cells[2].strip(), cells[3].strip());
    }

    List<String> tests() {
      return NAME.matcher(test).results().map((MatchResult r) -> r.group(1)).toList();
    }

    /** Methods by the class they are in. */
    List<Map.Entry<String, String>> methods() {
      return NAME.matcher(test)
          .results()
          .filter(r -> r.group(2) != null)
          .map(r -> Map.entry(r.group(1), r.group(2)))
          .toList();
    }

    Set<Double> figures() {
      return figuresOf(PARTED.matcher(value).replaceAll(""));
    }
  }

  private static List<Row> rows() throws IOException {
    return Files.readAllLines(Path.of("docs/references.md")).stream()
        .filter(l -> l.startsWith("| ") && !l.startsWith("| value") && !l.startsWith("| what"))
        .map(Row::of)
        .toList();
  }

  private static Set<Double> figuresOf(String text) {
    return FIGURE
        .matcher(text)
        .results()
        .map(r -> Double.valueOf(r.group()))
        .collect(Collectors.toSet());
  }

  /** The source of each class of the tests that asserts anything, by its name. */
  private static Map<String, String> classesWithTests() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      return files
          .filter(f -> f.toString().endsWith(".java"))
          .filter(f -> read(f).contains("assert"))
          .collect(
              Collectors.toMap(
                  f -> f.getFileName().toString().replace(".java", ""),
                  ReferencesTableTest::read,
                  String::concat));
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
    Map<String, String> there = classesWithTests();
    assertThat(rows())
        .flatExtracting(Row::tests)
        .filteredOn(t -> !there.containsKey(t))
        .as("named in docs/references.md, but no class of the tests that asserts anything")
        .isEmpty();
  }

  @Test
  void each_named_method_stands_in_its_class() throws IOException {
    Map<String, String> there = classesWithTests();
    assertThat(rows())
        .flatExtracting(Row::methods)
        .isNotEmpty()
        .allSatisfy(m -> assertThat(there.get(m.getKey())).contains(" " + m.getValue() + "("));
  }

  @Test
  void a_figure_of_each_row_stands_in_a_test_that_it_names_or_the_row_names_the_method()
      throws IOException {
    Map<String, String> there = classesWithTests();
    assertThat(rows())
        .filteredOn(r -> !r.figures().isEmpty() && r.methods().isEmpty())
        .filteredOn(
            r ->
                r.tests().stream()
                    .flatMap(
                        t -> figuresOf(there.get(t).replaceAll("(?<=\\d)_(?=\\d)", "")).stream())
                    .noneMatch(r.figures()::contains))
        .as("none of the row's figures is in the tests it names")
        .isEmpty();
  }
}
