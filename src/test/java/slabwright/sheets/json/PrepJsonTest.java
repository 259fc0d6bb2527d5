package slabwright.sheets.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.site.Site;
import slabwright.store.PlanFile;
import slabwright.words.Words;

/** The tally of the invented tram hall: its parts agree with its sums. */
class PrepJsonTest {
  private static final JsonNode TALLY = tally();
  private static final JsonNode HALL = TALLY.at("/areas/0");

  private static JsonNode tally() {
    Path plan = Path.of("sample-plans", "tram-hall.site.json");
    Site site = PlanFile.read(plan).orThrow();
    ReachAnalysis ways = ReachAnalysis.of(FloorTakeoff.of(site.areas().get(0)));
    try {
      return new ObjectMapper().readTree(TallyJson.write(site, List.of(ways), Words.english()));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static double sum(String list, String key) {
    double sum = 0;
    for (JsonNode n : HALL.get(list)) {
      sum += n.path(key).asDouble();
    }
    return sum;
  }

  @Test
  void every_passage_says_what_is_to_spare_and_a_way_in_without_a_name_is_one() {
    JsonNode passages = TALLY.get("passages");
    assertThat(passages.get(0).get("place").asText()).isEqualTo("main doors");
    assertThat(passages.get(0).get("wayIn").asBoolean()).isTrue();
    for (JsonNode p : passages) {
      double body = p.get("machine").asText().equals("planetary") ? 29 * 25.4 : 18 * 25.4;
      assertThat(p.get("spare_mm").asDouble())
          .isCloseTo(p.get("width_mm").asDouble() - body - 24, within(0.001));
      assertThat(p.get("fits").asBoolean()).isEqualTo(p.get("spare_mm").asDouble() >= 0);
      assertThat(p.get("place").asText()).isNotBlank();
    }
  }

  @Test
  void shares_sum_to_the_machines_floor() {
    assertThat(HALL.get("machines")).hasSize(2);
    assertThat(sum("machines", "share_mm2"))
        .isCloseTo(HALL.get("reach_mm2").asDouble(), within(1.0));
    assertThat(sum("machines", "shareAfterLevelling_mm2"))
        .isCloseTo(HALL.get("reachAfterLevelling_mm2").asDouble(), within(1.0));
  }

  @Test
  void kinds_sum_to_the_hand_work_and_strips_to_their_kind() {
    assertThat(sum("handByKind", "area_mm2"))
        .isCloseTo(HALL.get("hand_mm2").asDouble(), within(100.0));
    assertThat(sum("strips", "area_mm2"))
        .isCloseTo(HALL.at("/handByKind/0/area_mm2").asDouble(), within(100.0));
  }

  @Test
  void transitions_sum_to_their_whole_length() {
    assertThat(sum("transitions", "length_mm"))
        .isCloseTo(HALL.get("transitions_mm").asDouble(), within(0.01));
  }

  @Test
  void the_pocket_has_its_pass_and_the_curve_falls() {
    JsonNode pocket = HALL.at("/pockets/0");
    double clear = 2 * 12;
    assertThat(pocket.at("/pass/width_mm").asDouble() - pocket.get("widestBody_mm").asDouble())
        .isCloseTo(clear, within(0.01));
    for (JsonNode curve : HALL.get("reachCurves")) {
      double before = Double.POSITIVE_INFINITY;
      for (JsonNode point : curve.get("points")) {
        assertThat(point.get("machine_mm2").asDouble()).isLessThanOrEqualTo(before + 20_000);
        before = point.get("machine_mm2").asDouble();
      }
    }
  }
}
