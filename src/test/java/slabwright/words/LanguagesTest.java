package slabwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.ChoiceFormat;
import java.text.Format;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/** The bundles in another language held against the English ones. */
class LanguagesTest {
  private static final Path BUNDLES = Path.of("src/main/resources/slabwright/words");
  private static final Pattern ARGUMENT = Pattern.compile("\\{(\\d+)");
  private static final Pattern FIGURE = Pattern.compile("\\d[\\d.,/]*\\d|\\d");

  /** Parts of a line of a tape file, whose words are the same in every language. */
  private static final Pattern TAPE_LINE = Pattern.compile("check C to A-B is|viene is(?=:)");

  /** Spellings of Britain; what is typed (an option, a word of a file) is no spelling of ours. */
  private static final Pattern BRITISH =
      Pattern.compile(
          "(?<!--trace-|--)\\b(colour|vapour|labour|neighbour|centre|kerb|grey|levell(?!er)|mould"
              + "|behaviour|favour|metre|millimetre|litre|licence|earthed)(?!.*closing limit)",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern AMERICAN =
      Pattern.compile(
          "\\b(color|vapor|labor(?!at)|neighbor|curb|gray|level(ed|ing)\\b|center|millimeter|liter"
              + "|behavior|favor)",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern BETWEEN_WORDS = Pattern.compile("\\P{L}+");
  private static final Pattern SENTENCE = Pattern.compile("\\p{Ll}{3,} \\p{Ll}{2,}");

  /** English words that no Spanish sentence has. */
  private static final List<String> ENGLISH =
      List.of("the", "and", "of", "with", "is", "for", "not", "or", "from", "before", "after");

  private static Map<String, String> bundle(String file) throws IOException {
    Map<String, String> all = new TreeMap<>();
    for (String line : Files.readAllLines(BUNDLES.resolve(file + ".properties"))) {
      int at = line.indexOf('=');
      if (at > 0 && !line.startsWith("#")) {
        assertThat(all.put(line.substring(0, at), line.substring(at + 1)))
            .as("%s stands once", line.substring(0, at))
            .isNull();
      }
    }
    return all;
  }

  /** Every bundle of the program, the command line's help included. */
  static List<String> rooms() throws IOException {
    try (Stream<Path> files = Files.list(BUNDLES)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(n -> n.matches("[a-z-]+\\.properties"))
          .map(n -> n.replace(".properties", ""))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void a_room_is_complete_in_spanish(String room) throws IOException {
    Map<String, String> english = bundle(room);
    Map<String, String> spanish = bundle(room + "_es");
    assertThat(new TreeSet<>(spanish.keySet())).isEqualTo(new TreeSet<>(english.keySet()));
    List<String> wrong = new ArrayList<>();
    english.forEach((key, said) -> faults(said, spanish.get(key)).forEach(f -> wrong.add(key + f)));
    assertThat(wrong).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void the_english_a_room_is_written_in_is_spelled_as_in_the_states(String room)
      throws IOException {
    Map<String, String> english = bundle(room);
    assertThat(english.keySet().stream().filter(k -> BRITISH.matcher(english.get(k)).find()))
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("britishRooms")
  void british_english_says_the_same_with_its_own_spelling(String room) throws IOException {
    Map<String, String> english = bundle(room);
    Map<String, String> british = bundle(room + "_en_GB");
    assertThat(english.keySet()).containsAll(british.keySet());
    List<String> wrong = new ArrayList<>();
    english.forEach(
        (key, said) -> {
          String other = british.getOrDefault(key, said);
          if (AMERICAN.matcher(other).find()) {
            wrong.add(key + " is spelled as in the States");
          }
          if (british.containsKey(key) && other.equals(said)) {
            wrong.add(key + " stands twice for nothing");
          }
          if (!arguments(said).equals(arguments(other)) || !figures(said).equals(figures(other))) {
            wrong.add(key + " says something else");
          }
        });
    assertThat(wrong).isEmpty();
  }

  @Test
  void pages_in_meters_are_spelled_as_in_britain_and_those_in_feet_as_in_the_states() {
    Message meter = Message.of("work.consumable.gas-meter");
    assertThat(Words.english().inUnits(UnitSystem.METRIC).say(meter)).contains("vapour");
    assertThat(Words.english().inUnits(UnitSystem.FEET_INCHES).say(meter)).contains("vapor");
    assertThat(Words.english().say(meter)).contains("vapor").doesNotContain("vapour");
  }

  static List<String> britishRooms() throws IOException {
    try (Stream<Path> files = Files.list(BUNDLES)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(n -> n.endsWith("_en_GB.properties"))
          .map(n -> n.replace("_en_GB.properties", ""))
          .sorted()
          .toList();
    }
  }

  /** What a translation must have in common with what it translates, and what it must not. */
  private static List<String> faults(String english, String spanish) {
    List<String> faults = new ArrayList<>();
    if (!arguments(english).equals(arguments(spanish))) {
      faults.add(" takes other values");
    }
    if (!choices(english).equals(choices(spanish))) {
      faults.add(" tells other numbers apart");
    }
    if (!figures(english).equals(figures(spanish))) {
      faults.add(" gives " + figures(spanish) + " for " + figures(english));
    }
    if (english.equals(spanish) && SENTENCE.matcher(english).find() && !isDatePattern(english)) {
      faults.add(" is left in English");
    }
    List<String> words =
        BETWEEN_WORDS
            .splitAsStream(TAPE_LINE.matcher(spanish).replaceAll("").toLowerCase(Locale.ROOT))
            .toList();
    ENGLISH.stream()
        .filter(words::contains)
        .forEach(w -> faults.add(" holds the English word \"" + w + '"'));
    return faults;
  }

  private static boolean isDatePattern(String pattern) {
    return pattern.matches("[dMuEHhma .:]+");
  }

  private static Set<Integer> arguments(String pattern) {
    return ARGUMENT
        .matcher(pattern)
        .results()
        .map(r -> Integer.valueOf(r.group(1)))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The limits of each choice, by which one and many are told apart. */
  private static List<String> choices(String pattern) {
    List<String> limits = new ArrayList<>();
    for (Format f : new MessageFormat(pattern, Locale.ENGLISH).getFormats()) {
      if (f instanceof ChoiceFormat c) {
        limits.add(Arrays.toString(c.getLimits()));
      }
    }
    return limits;
  }

  /** The numbers that a sentence says by itself: none is lost or changed. */
  private static List<String> figures(String pattern) {
    return FIGURE
        .matcher(ARGUMENT.matcher(pattern).replaceAll("{"))
        .results()
        .map(MatchResult::group)
        .sorted()
        .toList();
  }
}
