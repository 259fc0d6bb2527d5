package slabwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The sentences in the bundles and the keys in the sources, held against each other. */
class BundlesTest {
  private static final Path BUNDLES = Path.of("src/main/resources/slabwright/words");

  /** Not patterns: what the command line's library says; CommandHelpTest holds it to its keys. */
  private static final String HELP = "cli-options.properties";

  /** Another language than the one the program is written in; LanguagesTest holds it to this. */
  private static final Pattern TRANSLATED = Pattern.compile(".*_[a-z]{2}(_[A-Z]{2})?\\.properties");

  private static final Pattern INDEX = Pattern.compile("\\{(\\d+)[,}]");

  private static Map<String, String> sentences() throws IOException {
    Map<String, String> all = new TreeMap<>();
    for (Path file : bundles()) {
      for (String line : Files.readAllLines(file)) {
        int at = line.indexOf('=');
        if (at > 0 && !line.startsWith("#")) {
          assertThat(all.put(line.substring(0, at), line.substring(at + 1)))
              .as("%s stands once", line.substring(0, at))
              .isNull();
        }
      }
    }
    return all;
  }

  private static List<Path> bundles() throws IOException {
    try (Stream<Path> files = Files.list(BUNDLES)) {
      return files
          .filter(p -> p.toString().endsWith(".properties") && !p.endsWith(HELP))
          .filter(p -> !TRANSLATED.matcher(p.getFileName().toString()).matches())
          .sorted()
          .toList();
    }
  }

  private static List<SourceText.Said> said() {
    return SourceText.files().stream().flatMap(f -> SourceText.said(f).stream()).toList();
  }

  @Test
  void every_key_in_the_sources_has_words_and_every_sentence_is_said() throws IOException {
    Set<String> used = said().stream().map(SourceText.Said::key).collect(Collectors.toSet());
    assertThat(used).isNotEmpty();
    Set<String> unsaid = new TreeSet<>(sentences().keySet());
    unsaid.removeAll(used);
    Set<String> wordless = new TreeSet<>(used);
    wordless.removeAll(sentences().keySet());
    assertThat(unsaid).as("words that nobody says").isEmpty();
    assertThat(wordless).as("keys without words").isEmpty();
  }

  @Test
  void a_key_begins_with_the_room_whose_bundle_has_it() throws IOException {
    for (Path file : bundles()) {
      String room = file.getFileName().toString().replace(".properties", "");
      for (String line : Files.readAllLines(file)) {
        assertThat(line).startsWith(room + ".");
      }
    }
  }

  @Test
  void every_sentence_uses_exactly_the_values_it_is_given() throws IOException {
    Map<String, String> sentences = sentences();
    List<String> wrong = new ArrayList<>();
    for (SourceText.Said s : said()) {
      String pattern = sentences.getOrDefault(s.key(), "");
      Set<Integer> taken = indexes(pattern);
      if (!taken.equals(
          Stream.iterate(0, i -> i + 1).limit(s.values()).collect(Collectors.toSet()))) {
        wrong.add(s.key() + " in " + s.file() + " gives " + s.values() + ", takes " + taken);
      }
    }
    assertThat(wrong).isEmpty();
  }

  /** The values a pattern takes, once it has been read as a pattern. */
  private static Set<Integer> indexes(String pattern) {
    assertThat(new MessageFormat(pattern).getFormats()).isNotNull();
    String plain = pattern.replace("''", "").replaceAll("'[^']*'", "");
    return INDEX
        .matcher(plain)
        .results()
        .map(r -> Integer.valueOf(r.group(1)))
        .collect(Collectors.toSet());
  }
}
