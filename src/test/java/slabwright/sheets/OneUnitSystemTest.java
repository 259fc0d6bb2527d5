package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.drawing.TextBox;
import slabwright.sheets.csv.BuyCsv;
import slabwright.sheets.csv.TakeoffCsv;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.units.UnitSystem;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ICalendarWriter;

/**
 * A job in feet shows no metric unit and one in metres no foot: on the single sheets, in the tables
 * for people, the calendars and the phone's page. The packets have the same rule in their own test.
 * quantities.csv and the JSON are for programs and stay in millimetres.
 */
class OneUnitSystemTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();

  private static final Pattern METRIC =
      Pattern.compile(
          "\\d[ \u00a0]?(m|mm|cm|m²|cm²|mm²|m³|m³/h|kg|g|L|l|mL|µm|°C|m2|mm2|km/h|bar)(?![\\w²³/′])"
              + "|(^|,)(m|mm|m²|L|kg)(,|$)");
  private static final Pattern FEET =
      Pattern.compile(
          "\\d[ \u00a0]?(ft|in|sq ft|sq in|gal|lb|lbs|oz|fl oz|mil|mils|cfm|mph|°F|psi)\\b|\\d[′″]"
              + "|(^|,)(ft|in|sq ft|gal|lb)(,|$)");

  /** Machines as the sample names them: a name is not a measure. */
  private static final String NAMED = "(floor grinder|edge machine), \\d+ in";

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"TABLOID", "A4"})
  void no_unit_of_the_other_system_stands_on_any_sheet(PaperSize paper) {
    List<String> lines =
        HALL.on(paper).stream()
            .flatMap(p -> TextBox.of(p.drawing()).stream().map(t -> p.name() + "|" + t.words()))
            .toList();
    assertThat(lines).hasSizeGreaterThan(1000);
    assertThat(found(lines.stream(), paper)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4"})
  void no_unit_of_the_other_system_stands_in_tables_calendars_and_on_the_phone(PaperSize paper) {
    PacketContents job = HALL.job(paper);
    UnitSystem units = job.site().units();
    DayPlan days = job.work().days().maybe().orElseThrow();
    List<String> files = new ArrayList<>();
    files.add(TakeoffCsv.write(job.areas(), units, job.words()));
    files.add(BuyCsv.write(job.work(), job.words()));
    String site = job.site().name();
    files.add(ICalendarWriter.of(days, site, Instant.EPOCH, job.words()::say));
    files.add(ICalendarWriter.forOthers(days, site, Instant.EPOCH, job.words()::say));
    // A folded line of a calendar goes on without its fold.
    String html = CrewPacket.html(job).replaceAll("(?s)<style>.*</style>", "");
    files.add(html.replaceAll("<[^>]*>", "\n"));
    for (String f : files) {
      assertThat(f.lines().count()).isGreaterThan(5);
      Stream<String> lines =
          f.replace("\r\n ", "").replace("\\,", ",").replace("\\n", "\n").lines();
      assertThat(found(lines, paper)).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4"})
  void tables_have_plain_numbers_and_iso_dates_in_every_language(PaperSize paper) {
    PacketContents job = HALL.job(paper);
    List<String> rows = BuyCsv.write(job.work(), job.words()).lines().skip(1).toList();
    assertThat(rows).isNotEmpty().allMatch(r -> r.matches(".*,\\d{4}-\\d\\d-\\d\\d"));
    assertThat(TakeoffCsv.write(job.areas(), job.site().units(), job.words()).lines().skip(1))
        .allMatch(r -> r.matches(".*,\\d+\\.\\d\\d,[^,\\d]+"));
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4"})
  void a_calendar_has_the_clock_of_the_pages(PaperSize paper) {
    PacketContents job = HALL.job(paper);
    String text =
        ICalendarWriter.of(
            job.work().days().maybe().orElseThrow(),
            job.site().name(),
            Instant.EPOCH,
            job.words()::say);
    String hour = paper.inches() ? "7:30\u00a0AM" : "7:30–";
    assertThat(text).contains("DESCRIPTION:" + hour).doesNotContain("(\\, ");
  }

  private static List<String> found(Stream<String> lines, PaperSize paper) {
    Pattern other = paper.inches() ? METRIC : FEET;
    return lines
        .filter(w -> other.matcher(w.substring(w.indexOf('|') + 1).replaceAll(NAMED, "")).find())
        .toList();
  }
}
