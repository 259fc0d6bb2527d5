package slabwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The tables that say which test holds which point name tests that are there. */
class PointTablesTest {
  /** A class between backticks, perhaps with one of its methods. */
  private static final Pattern NAMED = Pattern.compile("`([A-Z]\\w+)(?:\\.([a-z]\\w+))?`");

  private static Map<String, String> tests() throws IOException {
    Map<String, String> texts = new HashMap<>();
    try (Stream<Path> all = Files.walk(Path.of("src/test/java"))) {
      all.filter(p -> p.toString().endsWith(".java"))
          .forEach(
              p ->
                  texts.merge(
                      p.getFileName().toString().replace(".java", ""), text(p), String::concat));
    }
    return texts;
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"work-tests.md", "desk-tests.md"})
  void every_test_that_a_table_names_is_there(String table) throws IOException {
    Map<String, String> tests = tests();
    List<String> gone = new ArrayList<>();
    Matcher named = NAMED.matcher(Files.readString(Path.of("docs", table)));
    int count = 0;
    while (named.find()) {
      count++;
      String text = tests.getOrDefault(named.group(1), "");
      String method = named.group(2) == null ? "class " : "void " + named.group(2) + "(";
      if (!text.contains(method)) {
        gone.add(named.group());
      }
    }
    assertThat(count).isGreaterThan(20);
    assertThat(gone).isEmpty();
  }
}
