package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.site.Site;
import slabwright.site.job.DayForecast;
import slabwright.words.Words;
import slabwright.work.VapourLeft;

/** What the tram hall's papers say of vapour left behind, and of a coat that is held. */
class LeftAndHeldTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();
  private static final PacketContents JOB = HALL.job(PaperSize.LETTER);

  /** Rain on every day that is forecast: the terrace's sealer has none. */
  private static PacketContents held() {
    Site site = HALL.site();
    LocalDate start = site.start().orElseThrow().toLocalDate();
    List<DayForecast> rain = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      rain.add(
          new DayForecast(
              start.plusDays(i),
              OptionalDouble.of(12),
              OptionalDouble.of(20),
              OptionalDouble.of(40),
              OptionalDouble.of(80)));
    }
    Site wet = site.withJob(site.job().withForecast(rain));
    return new PacketContents(
        wet, HALL.results(), HALL.work(wet), PaperSize.LETTER, SheetSamples.DAY, Words.english());
  }

  @Test
  void whoever_reads_the_meter_when_the_crew_has_gone_writes_a_name_on_the_crews_and_fire_papers() {
    long days = VapourLeft.of(JOB.work()).stream().filter(l -> !l.present()).count();
    assertThat(days).isPositive();
    assertThat(PacketWords.of(Packet.CREW, JOB).split("Taken over by, name and time: ___", -1))
        .hasSize((int) days + 1);
    assertThat(PacketWords.of(Packet.CREW, JOB)).contains("No name: B stays and reads it");
    assertThat(PacketWords.of(Packet.FIRE_AND_SAFETY, JOB))
        .contains("The crew has left and vapor still counts")
        .contains("name and phone: ___")
        .contains("No name: B stays and reads it");
    assertThat(PacketWords.of(Packet.CLIENT, JOB).split("\\(we leave ", -1))
        .hasSize((int) days + 1);
    assertThat(PacketWords.of(Packet.CLIENT, JOB))
        .contains("floors stay locked until whoever took over the gas meter reads it clear");
  }

  @Test
  void times_of_solvent_say_that_they_are_rounded_outward_and_from_what_to_what() {
    assertThat(PacketWords.of(PacketSet.of(Packet.FIRE_AND_SAFETY, JOB).pages().get(0)))
        .contains(
            "Outward to a quarter of an hour, from the first can of a day to the last stroke");
  }

  @Test
  void whoever_follows_a_sample_panel_late_is_told_how_long_it_keeps_everybody_out() {
    assertThat(PacketWords.of(Packet.CREW, JOB)).contains("Then everybody out for at least 20 min");
  }

  /** A night between two days of solvent is no reason to let a floor and its coats go cold. */
  @Test
  void heating_is_off_day_by_day_and_not_from_the_first_can_to_the_last() {
    assertThat(PacketWords.of(Packet.CLIENT, JOB))
        .containsPattern("Thu, Dec 10, 9:30 AM\u2013\\d+:\\d\\d PM; Fri, Dec 11, ")
        .contains("Mon, Dec 14, 7:30 AM\u2013")
        .contains("Wed, Dec 16, 10:15 AM\u20137:15 PM")
        .contains("Thu, Dec 17, 7:30 AM\u20134:15 PM");
  }

  /** One can of 5 gal and three of 1 qt: 5.75 gal. */
  @Test
  void cans_with_solvent_have_a_place_for_the_night_on_the_crews_pages() {
    assertThat(PacketWords.of(Packet.CREW, JOB)).contains("Solvent overnight, at most 5.75 gal");
  }

  @Test
  void every_machine_of_the_load_list_is_told_by_the_step_that_drives_it() {
    assertThat(PacketWords.of(Packet.CREW, JOB))
        .contains("floor grinder, 29 in where it gets to; edge machine, 18 in where that is");
  }

  @Test
  void what_is_priced_of_a_job_that_can_not_start_says_that_its_days_are_nobodys() {
    PacketContents bike = SheetSamples.sample("bike-workshop").job(PaperSize.A4);
    assertThat(PacketWords.of(Packet.OFFICE, bike)).contains("as if nothing stood against any");
    assertThat(PacketWords.of(Packet.OFFICE, JOB))
        .doesNotContain("as if nothing stood against any");
  }

  @Test
  void a_floor_without_a_chosen_exposure_is_not_told_as_to_be_ground() {
    assertThat(PacketWords.of(Packet.OFFICE, JOB)).contains("If ground 451.4");
  }

  @Test
  void a_held_coat_of_a_job_that_can_start_stands_on_fire_and_client_pages_with_what_frees_it() {
    PacketContents job = held();
    assertThat(job.work().outlook().canStart()).isTrue();
    assertThat(job.work().outlook().held()).isNotEmpty();
    for (Packet packet : List.of(Packet.FIRE_AND_SAFETY, Packet.CLIENT)) {
      List<PrintedPage> pages = PacketSet.of(packet, job).pages();
      assertThat(PacketWords.of(pages.get(0)))
          .as(packet.name())
          .contains("HELD, not to be done before one of these is answered")
          .contains("Terrace: \"Breathing outdoor sealer (invented), coat 1")
          .contains("rain is forecast")
          .contains("Wait for the forecast of later days");
      assertThat(pages.subList(1, 3))
          .allSatisfy(p -> assertThat(PacketWords.of(p)).as(packet.name()).contains("HELD"));
    }
    assertThat(PacketWords.of(Packet.CLIENT, JOB)).doesNotContain("HELD");
    assertThat(PacketWords.of(Packet.FIRE_AND_SAFETY, JOB)).doesNotContain("HELD");
  }
}
