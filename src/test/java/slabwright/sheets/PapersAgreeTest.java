package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.drawing.Text;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.units.QuarterHour;
import slabwright.words.Words;
import slabwright.work.Presence;
import slabwright.work.days.KeepOutPeriod;
import slabwright.work.days.ScheduledStep;
import slabwright.work.prep.MixPlan;
import slabwright.work.step.StepKind;

/** That two pages of the tram hall's papers do not tell two people two things. */
class PapersAgreeTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();
  private static final PacketContents JOB = HALL.job(PaperSize.LETTER);
  private static final PacketContents SPANISH =
      HALL.job(PaperSize.LETTER, Words.of(Locale.forLanguageTag("es")));

  /** Of the crew, as the phone shows it. */
  private static String day(PacketContents job, String date) {
    List<String> days = Arrays.asList(CrewPacket.html(job).split("<section ", -1));
    return days.stream().filter(d -> d.contains(date + "</h")).findFirst().orElseThrow();
  }

  @Test
  void what_leaves_the_site_the_same_day_is_not_the_cans_that_have_a_place_for_the_night() {
    assertThat(PacketWords.of(Packet.CREW, JOB)).contains("Solvent overnight, at most 5.75 gal");
    assertThat(PacketWords.of(Packet.FIRE_AND_SAFETY, JOB))
        .doesNotContain("Cans and rags off the site the same day")
        .contains("Rags and empty cans off the site the same day")
        .contains("Solvent overnight, at most 5.75 gal: shut, locked");
  }

  /** Its limit is a mean over 15 minutes; nobody waits so long at that reading. */
  @Test
  void the_form_lets_nobody_in_from_the_reading_at_which_the_crew_lets_nobody_in() {
    assertThat(PacketWords.of(Packet.CREW, JOB)).contains("from 500 nobody is in");
    assertThat(PacketWords.of(Packet.FIRE_AND_SAFETY, JOB))
        .contains("STOP at 500 ppm of acetone on the meter (limit over 15 minutes): nobody in");
  }

  @Test
  void in_spanish_solvent_overnight_is_kept_off_ways_out_too_and_shut() {
    assertThat(PacketWords.of(Packet.CREW, SPANISH))
        .contains("tapado, bajo llave, lejos de desagües, salidas, calor y chispas");
  }

  /** The same three whole pages as in English. */
  @Test
  void fire_and_safety_has_three_pages_in_spanish_too() {
    assertThat(PacketSet.of(Packet.FIRE_AND_SAFETY, SPANISH).pages()).hasSize(3);
  }

  @Test
  void in_spanish_days_and_hours_have_their_articles() {
    assertThat(PacketWords.of(Packet.CREW, SPANISH))
        .contains("continúa desde el lunes 7 de diciembre")
        .contains("no antes del lunes 14 de diciembre a las 19:30")
        .contains("lea el medidor de gas hasta las 16:15")
        .contains("retroceda hasta main doors")
        .contains("Trazo de Heron ring: marque")
        .doesNotContain("medidor esté libre");
    assertThat(PacketWords.of(Packet.CLIENT, SPANISH)).doesNotContain("tenga quien tenga una");
  }

  @Test
  void a_night_between_two_days_of_solvent_has_its_cans_too() {
    assertThat(day(JOB, "Tuesday, Dec 15")).contains("Solvent overnight, at most 5.75 gal");
    assertThat(day(JOB, "Wednesday, Dec 9")).doesNotContain("Solvent overnight");
    assertThat(day(JOB, "Thursday, Dec 17")).doesNotContain("Solvent overnight");
  }

  @ParameterizedTest
  @CsvSource({"en, LETTER", "en, A4", "es, LETTER", "es, A4"})
  void who_checks_the_fire_form_reads_where_solvent_stays_overnight(
      String language, PaperSize paper) {
    Words said = Words.ofTag(language).orElseThrow();
    List<PrintedPage> fire =
        SheetSamples.tramHall().packet(Packet.FIRE_AND_SAFETY, paper, said).pages();
    assertThat(fire).hasSize(3);
    List<String> night =
        List.of(said.say("sheets.solvent-night.brief", "§", "______________").split("§", -1));
    assertThat(PacketWords.of(fire.get(2)))
        .contains(night.get(0))
        .contains(night.get(1).replace('\u00a0', ' '));
  }

  /** What is written in stands beside what it is: in one line of one page. */
  @ParameterizedTest
  @CsvSource({"en, Place:", "es, Lugar:"})
  void the_place_for_solvent_is_written_in_beside_its_word(String language, String label) {
    Words said = Words.ofTag(language).orElseThrow();
    for (PaperSize paper : List.of(PaperSize.LETTER, PaperSize.A4)) {
      for (Packet packet : List.of(Packet.CREW, Packet.FIRE_AND_SAFETY)) {
        List<String> places =
            SheetSamples.tramHall().packet(packet, paper, said).pages().stream()
                .flatMap(p -> p.drawing().plain().stream())
                .filter(Text.class::isInstance)
                .map(t -> ((Text) t).words().replace('\u00a0', ' '))
                .filter(t -> t.contains(label))
                .toList();
        assertThat(places).isNotEmpty().allMatch(t -> t.endsWith(label + " ______________"));
      }
    }
  }

  @Test
  void the_fire_lists_tell_once_who_is_kept_out_indoors_and_outdoors() {
    for (PacketContents job : List.of(JOB, SPANISH)) {
      String both = job.words().say("work.ignition-check.public-out-and-away");
      assertThat(PacketWords.of(Packet.FIRE_AND_SAFETY, job))
          .containsOnlyOnce(both)
          .doesNotContain(job.words().say("work.ignition-check.public-out"))
          .doesNotContain(job.words().say("work.ignition-check.public-away"));
    }
  }

  @Test
  void a_floor_is_locked_until_the_hour_from_which_its_next_coat_may_be_laid() {
    assertThat(day(JOB, "Wednesday, Dec 16"))
        .containsPattern("close and lock Terrace, Reading hall until 7:15.PM")
        .containsPattern("coat 2: not before Wednesday, Dec 16 7:15.PM");
  }

  /** Masking is set-up: the client's name is waited for by the first dye alone. */
  @Test
  void the_first_dye_is_planned_after_the_client_has_signed_and_the_crew_reads_that_it_waits() {
    List<ScheduledStep> steps = JOB.work().days().maybe().orElseThrow().steps();
    ScheduledStep panel = first(steps, StepKind.SAMPLE_PANEL);
    LocalDateTime signed = QuarterHour.up(KeepOutPeriod.until(panel).orElseThrow());
    LocalDateTime masked = first(steps, StepKind.MASK_WALLS).start();
    LocalDateTime dyed =
        steps.stream()
            .filter(s -> s.task().type().coat().isPresent())
            .map(ScheduledStep::start)
            .min(Comparator.naturalOrder())
            .orElseThrow();
    assertThat(dyed).isAfter(signed);
    assertThat(masked).isBefore(signed);
    assertThat(day(JOB, "Thursday, Dec 10"))
        .contains("once the air is clear. Dye waits for it; masking does not.");
  }

  private static ScheduledStep first(List<ScheduledStep> steps, StepKind kind) {
    return steps.stream().filter(s -> s.task().type().kind() == kind).findFirst().orElseThrow();
  }

  @Test
  void a_sample_panel_tells_once_how_long_all_are_out() {
    assertThat(day(JOB, "Thursday, Dec 10"))
        .contains("Then everybody out for at least 20 min")
        .doesNotContain("Then wait at least 20 min");
  }

  @Test
  void whoever_reads_the_meter_and_packs_up_reads_first() {
    String last = day(JOB, "Thursday, Dec 17");
    assertThat(last).contains("While solvent is out B only reads the gas meter");
    assertThat(last.substring(last.indexOf("Pack up outside")))
        .contains("for B the gas meter comes first, every 15 min; this only in between");
    assertThat(PacketWords.of(Packet.CREW, JOB).split("comes first, every 15 min", -1)).hasSize(2);
  }

  @Test
  void the_reading_at_which_all_leave_is_written_alike_for_crew_and_fire() {
    assertThat(PacketWords.of(Packet.CREW, JOB)).contains("10 % of LEL or 2,500 ppm");
    assertThat(PacketWords.of(Packet.FIRE_AND_SAFETY, JOB))
        .contains("At 2,500 ppm everybody is out");
    assertThat(PacketWords.of(Packet.FIRE_AND_SAFETY, SPANISH))
        .contains("En 2,500 ppm todos afuera");
  }

  @Test
  void a_vacuum_is_forbidden_with_solvent_out_and_not_by_a_page_that_has_one_run_before() {
    assertThat(day(JOB, "Thursday, Dec 10"))
        .contains("vacuum small")
        .contains("With solvent out: no flame, spark, switch; no vacuum not for vapor");
  }

  @Test
  void nobody_rests_until_an_hour_after_which_the_day_has_no_work_for_them() {
    assertThat(day(JOB, "Wednesday, Dec 16"))
        .contains("No stop for the midday break: nothing else is planned today")
        .doesNotContain("rests right after it");
  }

  @Test
  void the_page_to_write_readings_on_is_called_by_its_name() {
    assertThat(PacketWords.of(Packet.CREW, JOB))
        .contains("Where: page Air and gas meter. Write it down: page Gas meter readings.");
  }

  /** Three cartridges of 8 min and two guns: the third is emptied while one of the two waits. */
  @Test
  void a_step_that_fills_lasts_as_long_as_its_cartridges() {
    List<ScheduledStep> filling =
        JOB.work().days().maybe().orElseThrow().steps().stream()
            .filter(s -> s.task().type().kind() == StepKind.FILL_GAPS)
            .toList();
    assertThat(filling).hasSize(2);
    for (ScheduledStep s : filling) {
      MixPlan mixing =
          JOB.work()
              .area(s.task().type().areaId())
              .orElseThrow()
              .prep()
              .mixing(s.task().type().subject())
              .orElseThrow();
      int rounds = (mixing.count() + mixing.fillers() - 1) / mixing.fillers();
      assertThat(s.task().people()).isEqualTo(mixing.fillers());
      assertThat(s.worked()).isGreaterThan(mixing.longest().multipliedBy(rounds - 1));
      assertThat(s.worked()).isGreaterThanOrEqualTo(mixing.emptied().orElseThrow());
    }
  }

  /** Many short days: the cost says beside the number how it comes to so few hours. */
  @Test
  void person_days_say_on_how_many_days_how_many_people_are_there_and_for_how_long() {
    PacketContents bike = SheetSamples.sample("bike-workshop").job(PaperSize.A4);
    Presence here =
        Presence.of(bike.work().outlook().order().maybe().orElseThrow(), bike.work().book());
    assertThat(here.personDays()).isEqualTo(34);
    assertThat(PacketWords.of(Packet.OFFICE, bike))
        .contains("34 person days")
        .contains("18 days with 1 to 3 people there, 69.48 h in all");
    assertThat(Presence.hours(here.present())).hasToString("69.48");
  }

  @Test
  void what_has_no_date_yet_is_not_needed_by_it() {
    PacketContents bike = SheetSamples.sample("bike-workshop").job(PaperSize.A4);
    assertThat(PacketWords.of(Packet.OFFICE, bike))
        .contains("no date yet: Vacuum bags")
        .doesNotContain("by no date yet");
  }

  @Test
  void a_trench_of_unknown_height_is_told_in_the_order_of_the_work() {
    PacketContents depot = SheetSamples.sample("depot-floor").job(PaperSize.A4);
    assertThat(PacketWords.of(Packet.CREW, depot).replace('\n', ' '))
        .contains("first measure its height, then grind")
        .doesNotContain("by hand first");
  }
}
