package slabwright.sheets.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.site.Slab;
import slabwright.words.Words;
import slabwright.work.WorkSamples;

/** Keys that checks outside this program read: there, of the right kind, and in docs/json.md. */
class WorkContractTest {
  private static final JsonNode SOLVENT = work(WorkSamples.solventHall());
  private static final JsonNode COLD = work(cold());

  private static JsonNode work(Site site) {
    return json(WorkJson.write(WorkSamples.plan(site), Words.english()));
  }

  private static JsonNode json(String text) {
    try {
      return new ObjectMapper().readTree(text);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A hall of 5 °C: its coats are held, the terrace goes on. */
  private static Site cold() {
    Site site = WorkSamples.tramHall();
    return site.withAreas(
        site.areas().stream()
            .map(a -> a.id().equals("reading-hall") ? a.withSlab(cold(a.slab())) : a)
            .toList());
  }

  private static Slab cold(Slab s) {
    return s.withSurfaceC(OptionalDouble.of(5)).withAirC(OptionalDouble.of(5));
  }

  @Test
  void a_step_of_the_days_has_its_type_people_tools_and_spans() {
    assertThat(SOLVENT.at("/days/steps")).isNotEmpty();
    for (JsonNode s : SOLVENT.at("/days/steps")) {
      assertTexts(s, "id", "kind", "area", "protection");
      assertThat(s.has("stencil")).isTrue();
      assertThat(s.get("stencil").isNull() || s.get("stencil").asText().matches(".+/[1-9]\\d*"))
          .isTrue();
      assertThat(s.get("persons")).isNotEmpty().allMatch(p -> p.asText().matches("[A-Z]"));
      assertThat(s.get("tools").isArray()).isTrue();
      assertThat(s.get("toolKinds").isArray()).isTrue();
      assertThat(Duration.parse(s.get("length").asText())).isPositive();
      assertThat(s.get("spans")).isNotEmpty();
      for (JsonNode t : s.get("spans")) {
        assertThat(LocalDateTime.parse(t.get("start").asText()))
            .isBefore(LocalDateTime.parse(t.get("end").asText()));
      }
    }
  }

  @Test
  void closed_air_says_where_when_and_for_whom() {
    assertThat(SOLVENT.at("/air/closed")).isNotEmpty();
    for (JsonNode c : SOLVENT.at("/air/closed")) {
      assertTexts(c, "area", "step", "from", "to", "for", "limit", "after");
      assertThat(c.get("for").asText()).isIn("everyone", "unprotected");
    }
  }

  @Test
  void stops_and_held_steps_give_key_values_area_step_and_reason() {
    for (JsonNode list : List.of(COLD.get("stops"), COLD.get("held"))) {
      assertThat(list).isNotEmpty();
      for (JsonNode n : list) {
        assertTexts(n, "key", "area", "step", "reason");
        assertThat(n.get("values").isArray()).isTrue();
      }
    }
    assertThat(COLD.get("stops")).allMatch(s -> s.get("blocks").isBoolean());
    assertThat(COLD.get("held")).allMatch(h -> h.get("frees").isArray());
    Set<String> dated = new TreeSet<>();
    COLD.at("/days/steps").forEach(s -> dated.add(s.get("id").asText()));
    assertThat(COLD.get("held")).noneMatch(h -> dated.contains(h.get("step").asText()));
  }

  @Test
  void what_is_bought_is_by_product_and_colour_in_litres_and_kits() {
    assertThat(SOLVENT.get("buy")).isNotEmpty();
    for (JsonNode b : SOLVENT.get("buy")) {
      assertTexts(b, "product", "label", "colour");
      assertThat(b.get("needed_l").isNumber()).isTrue();
      assertThat(b.get("kits")).isNotEmpty();
      for (JsonNode k : b.get("kits")) {
        assertThat(k.get("count").isInt() && k.get("size_l").isNumber()).isTrue();
      }
    }
  }

  @Test
  void a_passage_has_its_machine_place_widths_and_answer() {
    FloorArea terrace = WorkSamples.tramHall().area("terrace").orElseThrow();
    Site site = WorkSamples.tramHall().withAreas(List.of(terrace));
    ReachAnalysis ways = ReachAnalysis.of(FloorTakeoff.of(terrace));
    JsonNode tally = json(TallyJson.write(site, List.of(ways), Words.english()));
    assertThat(tally.get("passages")).isNotEmpty();
    for (JsonNode p : tally.get("passages")) {
      assertTexts(p, "area", "machine", "place", "kind");
      assertThat(p.get("width_mm").isNumber() && p.get("spare_mm").isNumber()).isTrue();
      assertThat(p.get("fits").isBoolean()).isTrue();
    }
  }

  @Test
  void no_value_is_how_java_writes_what_is_not_there() {
    List<String> texts = new ArrayList<>();
    collect(SOLVENT, texts);
    collect(COLD, texts);
    assertThat(texts).noneMatch(t -> t.startsWith("Optional") || t.contains("Message["));
  }

  @Test
  void the_page_about_json_names_every_key_of_the_contract() throws IOException {
    String page = Files.readString(Path.of("docs/json.md"));
    assertThat(page)
        .contains("`days.steps[]`", "`air.closed[]`", "`stops[]`", "`held[]`", "`buy[]`")
        .contains("`passages[]`", "`needed_l`", "`spare_mm`", "`protection`", "`stencil`");
  }

  private static void assertTexts(JsonNode node, String... keys) {
    for (String key : keys) {
      assertThat(node.path(key).isTextual()).as("%s of %s", key, node).isTrue();
    }
  }

  private static void collect(JsonNode node, List<String> texts) {
    if (node.isTextual()) {
      texts.add(node.asText());
    }
    node.forEach(n -> collect(n, texts));
  }
}
