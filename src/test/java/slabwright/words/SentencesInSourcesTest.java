package slabwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No sentence for a reader stands in the code of a room whose words have moved to a bundle. */
class SentencesInSourcesTest {
  /** Rooms that still say their sentences themselves. The list only shrinks. */
  private static final Set<String> NOT_YET = Set.of("cli", "project");

  private static Map<String, List<String>> byRoom() {
    return SourceText.files().stream()
        .collect(
            Collectors.groupingBy(
                SourceText::room,
                TreeMap::new,
                Collectors.flatMapping(
                    f ->
                        SourceText.sentences(SourceText.read(f)).stream()
                            .map(s -> f.getFileName() + ": " + s),
                    Collectors.toList())));
  }

  @Test
  void a_room_with_sentences_in_its_code_is_on_the_list_of_rooms_to_convert() {
    Map<String, List<String>> found = byRoom();
    found.keySet().removeAll(NOT_YET);
    found.values().removeIf(List::isEmpty);
    assertThat(found).isEmpty();
  }

  @Test
  void a_room_on_the_list_still_has_sentences_in_its_code() {
    Map<String, List<String>> found = byRoom();
    found.values().removeIf(List::isEmpty);
    assertThat(new TreeSet<>(found.keySet())).containsAll(NOT_YET);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "f(\"Draw the walls.\");",
        "f(\"Outline\");",
        "f(\"\"\"\n    draws walls\n    \"\"\");",
        "f(\"no walls in \" + name);",
        "throw new IllegalStateException(\"a bug (here)\"); f(\"but this is read\");"
      })
  void a_sentence_or_label_is_found(String code) {
    assertThat(SourceText.sentences(code)).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "f(\"walls\");",
        "Message.of(\"floor.cut-in.usual\", 3);",
        "// says \"a long word\"\n",
        "/* says \"a long word\" */",
        "throw new IllegalStateException(g(\"no \" + x) + \"a bug here\");"
      })
  void what_no_reader_sees_is_no_sentence(String code) {
    assertThat(SourceText.sentences(code)).isEmpty();
  }
}
