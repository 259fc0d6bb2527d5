package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.sheets.csv.BuyCsv;
import slabwright.sheets.csv.TakeoffCsv;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.units.UnitSystem;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ICalendarWriter;
import slabwright.work.handover.OwnerTimes;
import slabwright.work.handover.Reopening;

/**
 * A job in feet shows no metric unit and one in metres no foot: on the single sheets, in the tables
 * for people, the calendars and the phone's page. The packets have the same rule in their own test.
 * quantities.csv and the JSON are for programs and stay in millimetres.
 */
class OneUnitSystemTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"TABLOID", "A4"})
  void no_unit_of_the_other_system_stands_on_any_sheet(PaperSize paper) {
    assertThat(OtherUnits.words(HALL.on(paper))).hasSizeGreaterThan(1000);
    assertThat(OtherUnits.on(HALL.on(paper), paper)).isEmpty();
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
    files.add(ICalendarWriter.of(CrewPacket.calendar(job), site, Instant.EPOCH, job.words()::say));
    files.add(
        ICalendarWriter.forOthers(
            days,
            OwnerTimes.of(job.work()).duties(),
            Reopening.closures(job.work()),
            site,
            Instant.EPOCH,
            job.words()::say));
    // A folded line of a calendar goes on without its fold.
    String html = CrewPacket.html(job).replaceAll("(?s)<style>.*</style>", "");
    files.add(html.replaceAll("<[^>]*>", "\n"));
    for (String f : files) {
      assertThat(f.lines().count()).isGreaterThan(5);
      Stream<String> lines =
          f.replace("\r\n ", "").replace("\\,", ",").replace("\\n", "\n").lines();
      assertThat(OtherUnits.in(lines, paper)).isEmpty();
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
        .allMatch(r -> r.matches(".*,\\d+\\.(\\d{4},m²|\\d\\d,(?!m²)[^,\\d]+)"));
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4"})
  void a_calendar_has_the_clock_of_the_pages(PaperSize paper) {
    PacketContents job = HALL.job(paper);
    String text =
        ICalendarWriter.of(
            CrewPacket.calendar(job), job.site().name(), Instant.EPOCH, job.words()::say);
    String hour = paper.inches() ? "7:30\u00a0AM A" : "7:30 A";
    assertThat(text).contains("DESCRIPTION:" + hour).doesNotContain("(\\, ");
  }
}
