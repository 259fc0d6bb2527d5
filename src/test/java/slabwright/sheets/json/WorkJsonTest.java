package slabwright.sheets.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.words.Words;
import slabwright.work.WorkSamples;

/** The work of the invented tram hall as JSON. */
class WorkJsonTest {
  private static final JsonNode WORK = work();

  private static JsonNode work() {
    try {
      return new ObjectMapper()
          .readTree(WorkJson.write(WorkSamples.plan(WorkSamples.tramHall()), Words.english()));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void no_value_is_the_name_of_a_class_or_an_address_in_memory() {
    List<String> texts = new ArrayList<>();
    collect(WORK, texts);
    assertThat(texts).hasSizeGreaterThan(500);
    assertThat(texts).noneMatch(t -> t.contains("slabwright.") || t.contains("@"));
  }

  private static void collect(JsonNode node, List<String> texts) {
    if (node.isTextual()) {
      texts.add(node.asText());
    }
    node.forEach(n -> collect(n, texts));
  }
}
