package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.sheets.json.TallyJson;
import slabwright.sheets.json.WorkJson;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.TimeFormat;
import slabwright.units.LengthFormat;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.AreaResult;
import slabwright.work.Presence;

/**
 * Each total of the office's pages is the value of the very key of the JSON that it stands for, not
 * just of any.
 */
class TotalsAndKeysTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();
  private static JsonNode tally;
  private static JsonNode work;

  @BeforeAll
  static void read() throws IOException {
    ObjectMapper json = new ObjectMapper();
    tally =
        json.readTree(
            TallyJson.write(
                HALL.site(),
                HALL.results().stream().map(AreaResult::ways).toList(),
                Words.english()));
    work = json.readTree(WorkJson.write(HALL.job(PaperSize.LETTER).work(), Words.english()));
  }

  /** The office's pages in one system of units. */
  private record Office(UnitSystem units, Words words, List<PrintedPage> pages) {
    static Office on(PaperSize paper) {
      UnitSystem units = paper.inches() ? UnitSystem.FEET_INCHES : UnitSystem.METRIC;
      return new Office(
          units, Words.english().inUnits(units), HALL.packet(Packet.OFFICE, paper).pages());
    }

    List<List<String>> rows(String label, int values) {
      return new PrintedRows(pages).rightOf(label, values);
    }

    String area(double mm2) {
      return QuantityFormat.area(mm2, units).split(" ", 2)[0];
    }

    String length(double mm) {
      return LengthFormat.show(mm, units);
    }

    String time(String iso) {
      return new TimeFormat(words).duration(Duration.parse(iso));
    }
  }

  private static List<JsonNode> each(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false).toList();
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4"})
  void areas_and_edges_of_each_floor_are_those_of_the_tally(PaperSize paper) {
    Office office = Office.on(paper);
    List<List<String>> net = office.rows("Net floor", 1);
    List<List<String>> ground = new ArrayList<>(office.rows("To be ground", 2));
    // the terrace's, in the order of the floors: no exposure is chosen for it
    ground.addAll(office.rows("If ground", 2));
    List<List<String>> machine = office.rows("by machine", 2);
    List<List<String>> hand = office.rows("by hand", 2);
    List<List<String>> stands = office.rows("Gross less net", 1);
    List<List<String>> totals = office.rows("Total", 2);
    List<JsonNode> areas = each(tally.get("areas"));
    assertThat(areas).hasSize(2);
    for (int i = 0; i < areas.size(); i++) {
      JsonNode a = areas.get(i);
      double floor = a.get("net_mm2").doubleValue();
      assertThat(net.get(i)).containsExactly(office.area(floor));
      String all = office.area(a.get("ground_mm2").doubleValue());
      assertThat(ground.get(i)).containsExactly(all, all);
      assertThat(machine.get(i))
          .containsExactly(
              office.area(a.get("reach_mm2").doubleValue()),
              office.area(a.get("reachAfterLevelling_mm2").doubleValue()));
      assertThat(hand.get(i))
          .containsExactly(
              office.area(a.get("hand_mm2").doubleValue()),
              office.area(a.get("handAfterLevelling_mm2").doubleValue()));
      assertThat(stands.get(i))
          .containsExactly(office.area(a.get("gross_mm2").doubleValue() - floor));
      double edges =
          each(a.get("edges")).stream().mapToDouble(e -> e.get("length_mm").doubleValue()).sum();
      // The first total of all is that of the cost.
      assertThat(totals.get(i + 1))
          .containsExactly(office.length(edges), office.length(a.get("cutIn_mm").doubleValue()));
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4"})
  void hours_filler_dust_and_bags_are_those_of_the_work(PaperSize paper) {
    Office office = Office.on(paper);
    JsonNode hall = work.get("areas").get(0);
    JsonNode sums = work.get("totals").get(0);
    assertThat(office.rows("All steps", 2).get(0))
        .containsExactly(
            office.time(sums.get("machineTime").textValue()),
            office.time(sums.get("handTime").textValue()));
    assertThat(office.rows("All gaps,", 1).get(0))
        .containsExactly(
            QuantityFormat.volume(hall.at("/prep/filler/mm3").doubleValue(), office.units()));
    List<List<String>> dust = office.rows("taken off the floor", 1);
    assertThat(dust)
        .contains(List.of(RateFormat.mass(sums.get("dust").doubleValue(), office.units())));
    assertThat(office.rows("vacuum bags,", 1))
        .contains(List.of(Integer.toString(hall.get("bags").intValue())));
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4"})
  void hours_and_money_are_one_number_on_summary_and_cost(PaperSize paper) {
    Office office = Office.on(paper);
    JsonNode cost = work.at("/scope/cost");
    Duration presence = Duration.parse(work.at("/days/hoursOfPresence").textValue());
    Duration hands = Duration.parse(work.at("/days/hoursOfSteps").textValue());
    String hours = Presence.hours(presence) + " h";
    assertThat(office.rows("hours of presence (priced)", 1)).containsExactly(List.of(hours));
    assertThat(office.rows("hours of people with hands", 1))
        .containsExactly(List.of(Presence.hours(hands) + " h"));
    String labour = paper.inches() ? "Labor, hours of presence" : "Labour, hours of presence";
    assertThat(office.rows(labour, 4).get(0))
        .containsExactly("1", hours, "62.00", money(cost.at("/lines/0/amount")));
    String total = money(cost.get("total"));
    assertThat(office.rows("Total", 1).get(0)).containsExactly(total);
    assertThat(office.rows("price by the shop book", 1).get(0))
        .containsExactly(total + " " + cost.get("currency").textValue());
    assertThat(office.rows("days with work", 1).get(0))
        .containsExactly(Integer.toString(work.at("/days/presence").size()));
    double sum = 0;
    for (JsonNode line : cost.get("lines")) {
      sum += line.get("amount").asDouble();
    }
    assertThat(money(sum)).isEqualTo(total);
  }

  private static String money(JsonNode amount) {
    return money(amount.asDouble());
  }

  private static String money(double amount) {
    return String.format(java.util.Locale.ROOT, "%,.2f", amount);
  }
}
