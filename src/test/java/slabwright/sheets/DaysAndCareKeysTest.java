package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.drawing.TextBox;
import slabwright.sheets.json.TallyJson;
import slabwright.sheets.json.WorkJson;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.TimeFormat;
import slabwright.units.LengthFormat;
import slabwright.units.QuantityFormat;
import slabwright.units.QuarterHour;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.AreaResult;
import slabwright.work.days.TimeSpan;

/**
 * What the day plan, the order of rolling and the reopening print is of the very key of the JSON
 * that it stands for.
 */
class DaysAndCareKeysTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();

  private static JsonNode work;

  @BeforeAll
  static void read() throws IOException {
    work =
        new ObjectMapper()
            .readTree(WorkJson.write(HALL.job(PaperSize.TABLOID).work(), Words.english()));
  }

  private static PrintedRows pages(PaperSize paper, String names) {
    var pages =
        HALL.on(paper).stream().filter(p -> p.name().matches("page-\\d\\d-" + names)).toList();
    assertThat(pages).isNotEmpty();
    return new PrintedRows(pages);
  }

  /** The place's name may be broken over two lines; the spare width never is. */
  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"TABLOID", "A3"})
  void each_doorway_says_on_paper_what_the_numbers_say(PaperSize paper) throws IOException {
    JsonNode tally =
        new ObjectMapper()
            .readTree(
                TallyJson.write(
                    HALL.site(),
                    HALL.results().stream().map(AreaResult::ways).toList(),
                    Words.english()));
    int doorways = 0;
    for (JsonNode p : tally.get("passages")) {
      if (p.has("doorway") && p.get("area").asText().equals("reading-hall")) {
        String spare = LengthFormat.show(Math.abs(p.get("spare_mm").asDouble()), units(paper));
        String words =
            HALL.on(paper).stream()
                .filter(x -> x.name().contains("prep-machines-ways-and-edges-reading-hall"))
                .flatMap(x -> TextBox.of(x.drawing()).stream())
                .map(TextBox::words)
                .collect(Collectors.joining(" "));
        assertThat(words).as(p.toString()).contains(p.get("place").asText(), spare);
        doorways++;
      }
    }
    assertThat(doorways).isPositive();
  }

  private static UnitSystem units(PaperSize paper) {
    return paper.inches() ? UnitSystem.FEET_INCHES : UnitSystem.METRIC;
  }

  private static TimeFormat times(PaperSize paper) {
    return new TimeFormat(Words.english().inUnits(units(paper)));
  }

  private static String time(JsonNode duration, PaperSize paper) {
    return times(paper).duration(Duration.parse(duration.textValue()));
  }

  private static String moment(LocalDateTime at, PaperSize paper) {
    return times(paper).moment(at, true).replace('\u00a0', ' ');
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"TABLOID", "A3"})
  void each_step_of_the_day_plan_has_its_own_times_and_people(PaperSize paper) {
    PrintedRows days = pages(paper, "day-plan.*");
    int seen = 0;
    for (JsonNode step : work.at("/days/steps")) {
      String area = step.at("/task/area").textValue();
      String label = step.at("/task/name").textValue() + (area.isEmpty() ? "" : " · " + area);
      List<List<String>> rows = new ArrayList<>(days.rightOfWrapped(label, 4));
      rows.addAll(days.rightOfWrapped("● " + label, 4));
      JsonNode spans = step.get("spans");
      TimeSpan told =
          new TimeSpan(at(spans.get(0), "start"), at(spans.get(spans.size() - 1), "end"))
              .toldAsWork();
      String takes = times(paper).works(worked(spans)).replace('\u00a0', ' ');
      assertThat(rows)
          .as(label)
          .contains(
              List.of(
                  moment(told.start(), paper),
                  moment(told.end(), paper),
                  takes,
                  letters(step.get("persons"))));
      seen++;
    }
    assertThat(seen).isEqualTo(51);
  }

  private static LocalDateTime at(JsonNode span, String key) {
    return LocalDateTime.parse(span.get(key).textValue());
  }

  private static Duration worked(JsonNode spans) {
    Duration sum = Duration.ZERO;
    for (JsonNode s : spans) {
      sum = sum.plus(Duration.between(at(s, "start"), at(s, "end")));
    }
    return sum;
  }

  private static String letters(JsonNode persons) {
    StringBuilder all = new StringBuilder();
    persons.forEach(p -> all.append(p.textValue()));
    return all.toString();
  }

  private static JsonNode topcoat() {
    JsonNode coats = work.at("/areas/0/coats");
    JsonNode last = coats.get(coats.size() - 1);
    assertThat(last.at("/job/product/id").textValue()).isEqualTo("topcoat");
    return last;
  }

  private static String area(double mm2, PaperSize paper) {
    return QuantityFormat.area(mm2, units(paper)).split(" ", 2)[0];
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"TABLOID", "A3"})
  void each_batch_of_the_topcoat_is_mixed_used_and_laid_as_in_its_entry(PaperSize paper) {
    PrintedRows rolling = pages(paper, "rolling-order-reading-hall");
    JsonNode list = topcoat().at("/batches/list");
    assertThat(list).hasSize(4);
    for (JsonNode b : list) {
      List<String> wanted =
          List.of(
              QuantityFormat.volume(b.get("mixed").doubleValue(), units(paper)),
              QuantityFormat.volume(b.get("used").doubleValue(), units(paper)),
              area(b.get("area").doubleValue(), paper),
              time(b.get("kept"), paper));
      assertThat(rolling.rightOf(b.get("number").asText(), 5))
          .as(b.toString())
          .anyMatch(r -> r.size() == 5 && r.subList(1, 5).equals(wanted));
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"TABLOID", "A3"})
  void every_fifth_lane_and_the_last_is_done_after_the_area_and_time_of_its_own(PaperSize paper) {
    PrintedRows rolling = pages(paper, "rolling-order-reading-hall");
    JsonNode lanes = topcoat().at("/lanes/lanes");
    double done = 0;
    for (int i = 0; i < lanes.size(); i++) {
      JsonNode lane = lanes.get(i);
      assertThat(lane.get("number").intValue()).isEqualTo(i + 1);
      done += lane.at("/region/area_mm2").doubleValue();
      if ((i + 1) % 5 == 0 || i == lanes.size() - 1) {
        assertThat(rolling.rightOf(area(done, paper), 1))
            .contains(List.of(time(lane.get("to"), paper)));
      }
    }
    assertThat(done).isBetween(work.at("/areas/0/coats/2/job/mm2").doubleValue() * 0.9999, 2e8);
  }

  @Test
  void the_reopening_of_each_floor_prints_the_moments_of_its_rows() {
    JsonNode sheets = work.at("/handovers/reopening");
    assertThat(sheets).hasSize(2);
    for (JsonNode sheet : sheets) {
      String floor = sheet.get("title").textValue().replaceFirst(".*: ", "");
      PrintedRows page =
          pages(
              PaperSize.TABLOID, "reopening.*" + floor.toLowerCase(Locale.ROOT).replace(' ', '-'));
      JsonNode when = sheet.at("/sections/0/rows");
      assertThat(when).hasSize(4);
      for (JsonNode row : when) {
        String value = row.get("value").textValue().replace('\u00a0', ' ');
        assertThat(page.rightOf(row.get("label").textValue(), 1)).containsExactly(List.of(value));
      }
      assertThat(page.rightOf("Last coat done", 1))
          .as("the end of the last coat in the day plan")
          .containsExactly(List.of(lastCoat(floor)));
    }
  }

  private static String lastCoat(String floor) {
    List<LocalDateTime> ends = new ArrayList<>();
    for (JsonNode step : work.at("/days/steps")) {
      JsonNode spans = step.get("spans");
      if (step.get("kind").textValue().equals("coat")
          && step.at("/task/area").textValue().equals(floor)) {
        ends.add(at(spans.get(spans.size() - 1), "end"));
      }
    }
    return moment(QuarterHour.up(ends.get(ends.size() - 1)), PaperSize.TABLOID);
  }
}
