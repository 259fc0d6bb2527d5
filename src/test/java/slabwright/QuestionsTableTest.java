package slabwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.inlay.artwork.ArtworkQuestion;

/** docs/json.md: what is asked about colors, what answers it, and the test that shows both. */
class QuestionsTableTest {
  private static final Path PAGE = Path.of("docs/json.md");
  private static final Pattern OPTION = Pattern.compile("`(--[a-z-]+)");
  private static final Pattern TEST = Pattern.compile("`([A-Za-z0-9]+)#([a-z0-9_]+)`");

  private record Row(String kind, String offered, String or, String test) {
    static Row of(String line) {
      String[] cells = line.split("\\|", -1);
      return new Row(
          cells[1].strip().replace("`", ""), cells[3].strip(), cells[4].strip(), cells[5].strip());
    }
  }

  private static Map<String, Row> rows() throws IOException {
    return Files.readAllLines(PAGE).stream()
        .dropWhile(l -> !l.equals("## What is asked about colors"))
        .skip(1)
        .takeWhile(l -> !l.startsWith("## "))
        .filter(l -> l.startsWith("| `"))
        .map(Row::of)
        .collect(Collectors.toMap(Row::kind, Function.identity()));
  }

  private static String kebab(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Test
  void the_table_names_every_question_and_no_other() throws IOException {
    List<String> kinds = Stream.of(ArtworkQuestion.Kind.values()).map(k -> kebab(k)).toList();
    assertThat(rows()).containsOnlyKeys(kinds);
  }

  @ParameterizedTest
  @EnumSource(ArtworkQuestion.Kind.class)
  void each_offer_is_the_one_made_and_its_options_exist(ArtworkQuestion.Kind kind)
      throws IOException {
    Row row = rows().get(kebab(kind));
    String offer = kebab(kind.offered());
    assertThat(row.offered).startsWith("`" + offer + "`: `--" + offer + " ");
    String options =
        source("src/main/java", "InlayOptions") + source("src/main/java", "TraceOptions");
    assertThat(OPTION.matcher(row.offered + row.or).results().map((MatchResult r) -> r.group(1)))
        .isNotEmpty()
        .allSatisfy(option -> assertThat(options).contains("names = \"" + option + "\""));
  }

  @ParameterizedTest
  @EnumSource(ArtworkQuestion.Kind.class)
  void each_question_is_raised_by_the_test_that_its_row_names(ArtworkQuestion.Kind kind)
      throws IOException {
    Matcher named = TEST.matcher(rows().get(kebab(kind)).test);
    assertThat(named.find()).isTrue();
    String text = source("src/test/java/slabwright/inlay", named.group(1));
    int at = text.indexOf("void " + named.group(2) + "(");
    assertThat(at).as(named.group()).isPositive();
    int next = text.indexOf("  @Test", at);
    assertThat(text.substring(at, next < 0 ? text.length() : next)).contains("Kind." + kind.name());
  }

  private static String source(String under, String type) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(under))) {
      Path file = files.filter(f -> f.endsWith(type + ".java")).findFirst().orElseThrow();
      return Files.readString(file);
    }
  }
}
