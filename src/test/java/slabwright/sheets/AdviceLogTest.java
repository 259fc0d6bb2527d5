package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slabwright.drawing.Text;
import slabwright.sheets.json.WorkJson;
import slabwright.sheets.page.PaperSize;
import slabwright.words.Words;
import slabwright.work.Said;
import slabwright.work.WorkPlan;
import slabwright.work.handover.Scope;

/** The advice log on sheet 8 and in the report say the same, advice by advice. */
class AdviceLogTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();
  private static final WorkPlan PLAN = HALL.work(HALL.site());

  private static List<String> texts() {
    return HALL.on(PaperSize.TABLOID).stream()
        .filter(p -> p.name().contains("scope-cost"))
        .flatMap(p -> p.drawing().plain().stream())
        .filter(Text.class::isInstance)
        .map(t -> ((Text) t).words())
        .toList();
  }

  private static long count(String word) {
    return texts().stream().filter(word::equals).count();
  }

  @Test
  void open_followed_and_declined_advice_are_told_apart() {
    Scope scope = Scope.of(PLAN);
    assertThat(count("declined")).isEqualTo(scope.declined().size()).isEqualTo(1);
    long open = scope.advice().stream().filter(Scope.GivenAdvice::isOpen).count();
    assertThat(count("open")).isEqualTo(open);
    assertThat(count("______")).as("initials for each open one").isEqualTo(open);
    assertThat(open).isLessThan(scope.advice().size() - 1L);
  }

  @Test
  void what_is_declined_stands_in_full_over_a_line_to_sign() {
    String page = texts().stream().collect(Collectors.joining(" "));
    for (Scope.GivenAdvice g : Scope.of(PLAN).declined()) {
      assertThat(page)
          .contains(Said.of(g.words()) + " This advice was " + Said.of(g.status()) + ".");
    }
    assertThat(count("client, does not take this advice")).isEqualTo(1);
  }

  @Test
  void the_report_has_the_plans_ids_with_who_and_when() throws JsonProcessingException {
    JsonNode log =
        new ObjectMapper().readTree(WorkJson.write(PLAN, Words.english())).at("/scope/advice");
    for (JsonNode given : log) {
      boolean terrace = given.get("key").asText().equals("terrace/moisture-test");
      assertThat(given.get("declined").asBoolean()).isEqualTo(terrace);
      assertThat(given.path("declinedBy").asText())
          .isEqualTo(terrace ? "A. Castell (invented)" : "");
      assertThat(given.path("declinedOn").asText()).isEqualTo(terrace ? "2026-11-20" : "");
      assertThat(given.get("key").asText()).endsWith("/" + given.at("/advice/id").asText());
    }
    assertThat(log).hasSize(Scope.of(PLAN).advice().size());
  }
}
