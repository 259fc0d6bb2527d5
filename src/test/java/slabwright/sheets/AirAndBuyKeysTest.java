package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.sheets.json.WorkJson;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** What people breathe and what is bought is printed of the very key of the JSON it stands for. */
class AirAndBuyKeysTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();
  private static final String COLUMN = "sheets.air-column.";
  private static final double CUBIC_FOOT_M3 = 0.028316846592;

  private static JsonNode work;

  @BeforeAll
  static void read() throws IOException {
    work =
        new ObjectMapper()
            .readTree(WorkJson.write(HALL.job(PaperSize.TABLOID).work(), Words.english()));
  }

  private static String say(String key, Object... values) {
    return Words.english().say(key, values);
  }

  private static PrintedRows air(PaperSize paper) {
    List<PrintedPage> pages =
        HALL.on(paper).stream()
            .filter(p -> p.name().matches("page-\\d\\d-air-.*reading-hall"))
            .toList();
    assertThat(pages).isNotEmpty();
    return new PrintedRows(pages);
  }

  private static JsonNode screening(String at) {
    JsonNode found = work.at("/areas/0/air/screening/" + at);
    assertThat(found.isMissingNode()).as(at).isFalse();
    return found;
  }

  private static String number(double value, int decimals) {
    return QuantityFormat.number(value, decimals);
  }

  private static String percent(JsonNode share) {
    return number(share.doubleValue() * 100, share.doubleValue() < 0.1 ? 1 : 0) + " %";
  }

  private static String ofLel(JsonNode share) {
    return say(COLUMN + "of-lel", percent(share));
  }

  private static String flow(JsonNode cubicMetres, PaperSize paper) {
    double flow = cubicMetres.doubleValue();
    return paper.inches()
        ? number(flow / CUBIC_FOOT_M3, 0) + " cfm"
        : number(flow * 60, 0) + " m³/h";
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"TABLOID", "A3"})
  void peaks_and_the_sum_of_limits_are_those_of_the_closed_and_of_the_aired_room(PaperSize paper) {
    PrintedRows air = air(paper);
    assertThat(air.rightOfWrapped(say(COLUMN + "peak-low"), 2))
        .containsExactly(
            List.of(
                ofLel(screening("closed/layerPeakLel")), ofLel(screening("stated/layerPeakLel"))));
    assertThat(air.rightOf(say(COLUMN + "peak-mean"), 2))
        .containsExactly(
            List.of(ofLel(screening("closed/peakLel")), ofLel(screening("stated/peakLel"))));
    assertThat(air.rightOfWrapped(say(COLUMN + "limits-together"), 2))
        .containsExactly(
            List.of(
                number(screening("closed/layerTogether").doubleValue(), 2) + " ×",
                number(screening("stated/layerTogether").doubleValue(), 2) + " ×"));
    assertThat(air.rightOf(say(COLUMN + "fresh-air"), 2))
        .contains(List.of(say(COLUMN + "none"), flow(screening("stated/airflow"), paper)));
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"TABLOID", "A3"})
  void the_fresh_air_that_is_needed_is_that_of_its_reason(PaperSize paper) {
    PrintedRows air = air(paper);
    assertThat(air.rightOf(say(COLUMN + "fire"), 2))
        .containsExactly(
            List.of(flow(screening("need/layerFire"), paper), flow(screening("need/fire"), paper)));
    assertThat(air.rightOf(say(COLUMN + "health"), 2))
        .containsExactly(
            List.of(
                flow(screening("need/layerHealth"), paper), flow(screening("need/health"), paper)));
    String byFloor = paper.inches() ? "by-floor" : "by-floor-in-meters";
    String floor = flow(screening("need/byFloor"), paper);
    assertThat(air.rightOf(label(paper, byFloor), 2)).containsExactly(List.of(floor, floor));
  }

  /** As it reads on a page in these units. */
  private static String label(PaperSize paper, String key) {
    UnitSystem units = paper.inches() ? UnitSystem.FEET_INCHES : UnitSystem.METRIC;
    return Words.english().inUnits(units).say(COLUMN + key);
  }

  @Test
  void each_limit_stands_beside_what_is_reached_of_it_without_and_with_fresh_air() {
    PrintedRows air = air(PaperSize.TABLOID);
    JsonNode closed = screening("closed/limits");
    JsonNode stated = screening("stated/limits");
    assertThat(closed).hasSize(5);
    for (int i = 0; i < closed.size(); i++) {
      JsonNode limit = closed.get(i).get("limit");
      String key =
          switch (limit.get("span").textValue()) {
            case "eight hours" -> "eight-hours";
            case "fifteen minutes" -> "fifteen-minutes";
            default -> "at-any-time";
          };
      String label =
          say(
              COLUMN + key,
              closed.get(i).at("/solvent/name").textValue(),
              limit.get("name").textValue());
      assertThat(air.rightOf(label, 3))
          .as(label)
          .containsExactly(reached(closed.get(i)), reached(stated.get(i)));
    }
  }

  private static List<String> reached(JsonNode limit) {
    double times = limit.get("layerRatio").doubleValue();
    return List.of(
        number(limit.at("/limit/share").doubleValue() * 1e6, 0) + " ppm",
        number(limit.get("layerReached").doubleValue() * 1e6, 0) + " ppm",
        (times > 1 ? "✕ " : "✓ ") + number(times, 2) + " ×");
  }

  @Test
  void each_step_that_sets_vapour_free_has_its_own_peaks() {
    PrintedRows air = air(PaperSize.TABLOID);
    JsonNode steps = screening("closed/steps");
    JsonNode aired = screening("stated/steps");
    assertThat(steps).hasSize(9);
    for (int i = 0; i < steps.size(); i++) {
      String name = steps.get(i).get("name").textValue();
      assertThat(air.rightOf(name + ",", 2))
          .as(name)
          .containsExactly(peaks(steps.get(i)), peaks(aired.get(i)));
    }
  }

  private static List<String> peaks(JsonNode step) {
    return List.of(percent(step.get("peakLel")), percent(step.get("layerPeakLel")));
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4"})
  void what_is_to_be_bought_is_what_its_product_needs_in_kits_that_hold_it(PaperSize paper) {
    UnitSystem units = paper.inches() ? UnitSystem.FEET_INCHES : UnitSystem.METRIC;
    PrintedRows office = new PrintedRows(HALL.packet(Packet.OFFICE, paper).pages());
    List<List<String>> wanted = new ArrayList<>();
    Set<List<String>> printed = new LinkedHashSet<>();
    for (JsonNode line : work.get("buy")) {
      List<String> kits = new ArrayList<>();
      double held = 0;
      for (JsonNode kit : line.get("kits")) {
        double litres = kit.get("size_l").doubleValue();
        held += kit.get("count").intValue() * litres;
        kits.add(kit.get("count").intValue() + " of " + QuantityFormat.volume(litres * 1e6, units));
      }
      double needed = line.get("needed_l").doubleValue();
      assertThat(held).as(line.toString()).isGreaterThanOrEqualTo(needed - 1e-9);
      wanted.add(List.of(QuantityFormat.volume(needed * 1e6, units), String.join(", ", kits)));
    }
    for (JsonNode line : work.get("buy")) {
      String colour = line.get("colour").textValue();
      String label = line.get("label").textValue() + (colour.isEmpty() ? "" : ", " + colour);
      office.rightOfWrapped(label, 2).stream().filter(wanted::contains).forEach(printed::add);
    }
    assertThat(printed).containsExactlyElementsOf(wanted);
  }
}
