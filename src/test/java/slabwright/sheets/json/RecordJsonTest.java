package slabwright.sheets.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slabwright.units.Message;
import slabwright.words.Words;

/** Records as JSON. */
class RecordJsonTest {
  private record Noted(Message note, List<Message> more, double never) {}

  @Test
  void a_message_is_its_sentence_and_a_number_without_end_a_word() {
    Message page = Message.of("pdfin.no-such-page", 7, 3);
    String sentence = Words.english().say(page);
    Noted noted = new Noted(page, List.of(page), Double.POSITIVE_INFINITY);
    assertThat(JsonText.line(new RecordJson(Set.of(), Words.english()).fields(noted)))
        .isEqualTo(
            "{\"note\":\"%s\",\"more\":[\"%s\"],\"never\":\"without end\"}"
                .formatted(sentence, sentence));
  }

  private record Measured(OptionalDouble off, OptionalInt year, Optional<String> by) {}

  @Test
  void what_was_not_measured_is_absent() {
    RecordJson json = new RecordJson(Set.of(), Words.english());
    assertThat(
            JsonText.line(
                json.fields(
                    new Measured(OptionalDouble.empty(), OptionalInt.empty(), Optional.empty()))))
        .isEqualTo("{}");
    assertThat(
            JsonText.line(
                json.fields(
                    new Measured(OptionalDouble.of(2.5), OptionalInt.of(1974), Optional.of("A")))))
        .isEqualTo("{\"off\":2.5,\"year\":1974,\"by\":\"A\"}");
  }
}
