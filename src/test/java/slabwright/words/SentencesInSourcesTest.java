package slabwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No sentence for a reader stands in the code; all words are in the bundles. */
class SentencesInSourcesTest {
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
  void no_room_has_a_sentence_in_its_code() {
    Map<String, List<String>> found = byRoom();
    assertThat(found).containsKeys("cli", "desk", "work");
    found.values().removeIf(List::isEmpty);
    assertThat(found).isEmpty();
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
