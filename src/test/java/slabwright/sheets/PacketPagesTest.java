package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import slabwright.drawing.Raster;
import slabwright.drawing.Symbol;
import slabwright.drawing.Text;
import slabwright.drawing.TextBox;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.PrintedPacket;
import slabwright.sheets.page.PageFrame;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.units.Message;
import slabwright.units.QuarterHour;
import slabwright.units.RateFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.AirPlan;
import slabwright.work.JobTools;
import slabwright.work.MeterWatch;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirScreening;
import slabwright.work.air.LimitComparison;
import slabwright.work.days.TimeSpan;

/** What must hold of every page of a packet, tried on the sample site. */
class PacketPagesTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();

  private static PrintedPacket packet(Packet packet, PaperSize paper) {
    return HALL.packet(packet, paper);
  }

  @Test
  void readers_outside_the_crew_read_first_that_a_stopped_job_cannot_start_as_planned() {
    SheetSamples stopped = SheetSamples.sample("bike-workshop");
    for (Packet p : List.of(Packet.CLIENT, Packet.SIGN_SHOP, Packet.FIRE_AND_SAFETY)) {
      List<String> first = words(stopped.packet(p, PaperSize.A4).pages().get(0));
      assertThat(first).contains("This job can't start as planned");
      assertThat(String.join(" ", first)).contains("asbestos");
      assertThat(String.join(" ", words(packet(p, PaperSize.LETTER).pages().get(0))))
          .doesNotContain("can't start");
    }
  }

  /** Whoever holds or signs one page alone reads it there; the reasons stand once. */
  @ParameterizedTest
  @CsvSource({"en, LETTER", "en, A4", "es, LETTER", "es, A4"})
  void each_page_to_sign_of_a_stopped_job_says_so_in_short(String language, PaperSize paper) {
    Words said = Words.of(Locale.forLanguageTag(language));
    SheetSamples stopped = SheetSamples.sample("bike-workshop");
    List<PrintedPage> fire = stopped.packet(Packet.FIRE_AND_SAFETY, paper, said).pages();
    List<PrintedPage> client = stopped.packet(Packet.CLIENT, paper, said).pages();
    assertThat(fire).hasSize(3);
    assertThat(client).hasSize(4);
    for (PrintedPage page : List.of(fire.get(1), client.get(1), client.get(2))) {
      assertThat(String.join(" ", words(page)))
          .as(page.title())
          .contains(said.say("sheets.stop-notice.not-yet"))
          .contains(said.say("sheets.brief-stop.asbestos"))
          .doesNotContain("1926.1101");
    }
    // the lists have no room for a box everywhere
    String lists = String.join(" ", words(fire.get(2)));
    assertThat(
            lists.contains(said.say("sheets.brief-stop.asbestos"))
                || lists.contains(said.say("sheets.stop-notice.under-title", "").strip()))
        .isTrue();
  }

  @Test
  void the_fire_packet_is_one_plan_of_all_floors_one_form_and_then_lists() {
    List<PrintedPage> pages = packet(Packet.FIRE_AND_SAFETY, PaperSize.LETTER).pages();
    assertThat(words(pages.get(0))).contains("Reading hall", "Terrace", "M1", "FE");
    assertThat(pages.get(1).title()).isEqualTo("Form for the permit and the door");
    assertThat(words(pages.get(1))).contains("Stop numbers", "Fire authority", "Fire department");
    // Of two floors: their lists to tick need the third page. What other rules ask for is the
    // lead's.
    assertThat(pages.get(2).title()).isEqualTo("Check lists");
    assertThat(words(pages.get(2))).contains("Before the first can is opened");
    assertThat(pages).hasSize(3);
    for (String said : List.of("Silica, written plan", "Carbon monoxide", "Noise")) {
      assertThat(String.join(" ", words(pages.get(2)))).contains(said);
      assertThat(
              packet(Packet.OFFICE, PaperSize.LETTER).pages().stream()
                  .map(page -> String.join(" ", words(page))))
          .anyMatch(w -> w.contains("Rules that ask for care"))
          .anyMatch(w -> w.contains(said));
    }
  }

  @Test
  void a_job_with_one_solvent_floor_has_fire_and_safety_on_three_whole_pages_of_a4() {
    List<PrintedPage> pages =
        HALL.only("reading-hall").packet(Packet.FIRE_AND_SAFETY, PaperSize.A4).pages();
    // rules to keep to while it is out, and the days and hours, took the room that two pages had
    assertThat(pages).extracting(PrintedPage::title).hasSize(3).doesNotHaveDuplicates();
    String plan = String.join(" ", words(pages.get(0)));
    String form = String.join(" ", words(pages.get(1)));
    assertThat(plan).contains("M1", "FE");
    assertThat(form).contains("Stop numbers", "Fire authority", "29 CFR 1926.1202");
    assertThat(plan + form + String.join(" ", words(pages.get(2))))
        .contains("Before the first can is opened", "Before anything is switched on again")
        .contains("Screening estimate");
    // a phone number in one piece
    assertThat(words(pages.get(1))).anyMatch(w -> w.endsWith("555\u00a00100"));
  }

  @ParameterizedTest
  @CsvSource({"tram-hall, LETTER", "tram-hall, A4", "bike-workshop, LETTER", "bike-workshop, A4"})
  void fire_and_safety_is_three_pages_at_most_and_none_goes_on(String name, PaperSize paper) {
    for (String language : List.of("en", "es")) {
      Words words = Words.of(Locale.forLanguageTag(language));
      List<PrintedPage> pages =
          SheetSamples.sample(name).packet(Packet.FIRE_AND_SAFETY, paper, words).pages();
      assertThat(pages).as(language).hasSizeLessThanOrEqualTo(3);
      String more = words.say("sheets.page-draft.continued", "").strip();
      assertThat(pages).extracting(PrintedPage::title).noneMatch(t -> t.contains(more));
    }
  }

  @Test
  void the_fire_form_says_who_reads_the_meter_who_keeps_the_door_and_who_calls() {
    String form =
        String.join(" ", words(packet(Packet.FIRE_AND_SAFETY, PaperSize.LETTER).pages().get(1)));
    String crew =
        packet(Packet.CREW, PaperSize.LETTER).pages().stream()
            .map(p -> String.join(" ", words(p)))
            .reduce("", String::concat);
    String reads = "B only reads the gas meter, from the way in, held low";
    assertThat(crew).contains(reads);
    assertThat(form).contains(reads, "Keeps the door", "Calls for help", "Fire watch");
  }

  @Test
  void the_crew_reads_its_respirator_for_dust_itself_and_the_office_the_rule() {
    for (Words words : List.of(Words.english(), Words.of(Locale.forLanguageTag("es")))) {
      assertThat(words.say("sheets.crew-cautions.silica")).contains("P100");
      assertThat(words.say("sheets.crew-cautions.silica-by-hand")).contains("P100");
      assertThat(words.say("sheets.crew-cautions.silica-worn", "A")).contains("P100", "A");
      String rules = words.say("sheets.office-packet.rules");
      assertThat(
              HALL.packet(Packet.OFFICE, PaperSize.LETTER, words).pages().stream()
                  .map(page -> String.join(" ", words(page))))
          .anyMatch(w -> w.contains(rules));
    }
  }

  /** A flow that no fan moves stood where the figure below the waist is well within the limits. */
  @Test
  void
      the_fire_form_says_what_fire_asks_for_whether_breathing_limits_are_kept_and_if_fans_fall_short() {
    PacketContents job = HALL.job(PaperSize.LETTER);
    AirScreening air =
        job.work()
            .area("reading-hall")
            .orElseThrow()
            .air()
            .maybe()
            .orElseThrow()
            .screening()
            .orElseThrow();
    AirFigures stated = air.stated().orElseThrow();
    assertThat(stated.layerTogether()).isLessThan(1);
    assertThat(stated.limits()).noneMatch(LimitComparison::isPassed);
    double fans = JobTools.fansBelow(stated.airflow(), job.work()).orElseThrow();
    assertThat(fans).isLessThan(stated.airflow());
    assertThat(air.need().byFloor()).isGreaterThan(air.need().layerFire());
    UnitSystem units = UnitSystem.FEET_INCHES;
    assertThat(
            String.join(
                " ", words(packet(Packet.FIRE_AND_SAFETY, PaperSize.LETTER).pages().get(1))))
        .contains(RateFormat.airflow(stated.airflow(), units) + " by the plan")
        .contains("the job's fans move " + RateFormat.airflow(fans, units) + ": TOO LITTLE")
        .contains("the floor's size asks for " + RateFormat.airflow(air.need().byFloor(), units))
        .contains("breathing limits below the waist: kept");
    SheetSamples bike = SheetSamples.sample("bike-workshop");
    AirFigures closed =
        bike.job(PaperSize.A4).work().areas().stream()
            .flatMap(w -> w.air().maybe().flatMap(AirPlan::screening).stream())
            .map(AirScreening::closed)
            .findFirst()
            .orElseThrow();
    assertThat(closed.layerTogether()).isGreaterThan(1);
    assertThat(all(bike.packet(Packet.FIRE_AND_SAFETY, PaperSize.A4)))
        .contains("breathing limits below the waist: EXCEEDED")
        // a coat of less is told on the first page, with less
        .contains("highest during Mist coat 3");
    assertThat(Words.english().say(closed.peakStep())).startsWith("Mist coat 3");
  }

  @ParameterizedTest
  @CsvSource({"tram-hall, LETTER", "tram-hall, A4", "bike-workshop, LETTER", "bike-workshop, A4"})
  void the_fire_packet_has_all_rules_to_keep_to_while_solvent_is_out(String name, PaperSize paper) {
    for (Words words : List.of(Words.english(), Words.of(Locale.forLanguageTag("es")))) {
      PacketContents job = SheetSamples.sample(name).job(paper, words);
      String said = all(SheetSamples.sample(name).packet(Packet.FIRE_AND_SAFETY, paper, words));
      List<Message> rules =
          job.work().areas().stream()
              .flatMap(a -> a.air().maybe().stream())
              .flatMap(a -> a.ignition().during().stream())
              .distinct()
              .toList();
      assertThat(rules).hasSizeGreaterThan(4);
      for (Message rule : rules) {
        assertThat(said.replace(" ", "")).contains(job.words().say(rule).replace(" ", ""));
      }
    }
  }

  /** The mean by fire rules alone read as the air to bring; the hold asks for far more. */
  @Test
  void the_fire_form_prints_the_air_that_frees_what_is_held_as_the_hold_itself_does() {
    SheetSamples bike = SheetSamples.sample("bike-workshop");
    List<Message> frees =
        bike.job(PaperSize.A4).work().outlook().held().stream()
            .flatMap(h -> h.frees().stream())
            .filter(m -> m.key().equals("work.held.more-air"))
            .toList();
    assertThat(frees).isNotEmpty();
    String most =
        frees.stream()
            .map(m -> m.values().get(0).toString())
            .max(Comparator.comparingDouble(v -> Double.parseDouble(v.replaceAll("[^0-9.]", ""))))
            .orElseThrow();
    assertThat(
            String.join(
                " ", words(bike.packet(Packet.FIRE_AND_SAFETY, PaperSize.A4).pages().get(1))))
        .contains("it asks for " + most);
  }

  /** By the day plan itself: a quarter hour never ends before the work does. */
  @Test
  void the_fire_packet_tells_each_day_and_hour_that_solvent_is_laid() {
    PacketContents job = HALL.job(PaperSize.LETTER);
    DateTimeFormatter day = DateTimeFormatter.ofPattern("EEE, MMM d", Locale.ENGLISH);
    DateTimeFormatter hour = DateTimeFormatter.ofPattern("h:mm\u00a0a", Locale.ENGLISH);
    Map<LocalDate, List<TimeSpan>> days =
        job.work().days().maybe().orElseThrow().steps().stream()
            .filter(s -> MeterWatch.isAskedFor(job.work(), s.task().type()))
            .flatMap(s -> s.spans().stream())
            .collect(
                Collectors.groupingBy(
                    t -> t.start().toLocalDate(), TreeMap::new, Collectors.toList()));
    assertThat(days).hasSize(5);
    String first =
        String.join(" ", words(packet(Packet.FIRE_AND_SAFETY, PaperSize.LETTER).pages().get(0)));
    days.forEach(
        (on, spans) -> {
          LocalDateTime from =
              spans.stream().map(TimeSpan::start).min(LocalDateTime::compareTo).get();
          LocalDateTime to = spans.stream().map(TimeSpan::end).max(LocalDateTime::compareTo).get();
          assertThat(first)
              .contains(
                  on.format(day)
                      + " "
                      + QuarterHour.down(from).format(hour)
                      + "\u2013"
                      + QuarterHour.up(to).format(hour));
        });
    // on Monday two coats of 1.33 fl oz through stencil 2 and three of 3.81 through stencil 3
    assertThat(first).contains("1.67 gal", "5.8 fl oz", "14.1 fl oz");
    assertThat(first)
        .contains("where and what")
        .containsSubsequence(
            "where and what", "14.1 fl oz", "vapor is there until the meter reads clear.");
  }

  /** The whole hall stood there, beside a verdict on 17 sq ft. */
  @Test
  void the_fire_form_names_the_floor_that_flammable_liquid_goes_onto() {
    String form = packet(Packet.FIRE_AND_SAFETY, PaperSize.LETTER).pages().get(1).title();
    assertThat(form).isEqualTo("Form for the permit and the door");
    assertThat(words(packet(Packet.FIRE_AND_SAFETY, PaperSize.LETTER).pages().get(1)))
        .contains("Flammable liquid is laid on: Reading hall, 17.4 sq ft; Terrace, 451.4 sq ft");
  }

  @Test
  void outdoors_the_fire_plan_draws_no_fan_and_a_door_into_another_floor_is_no_way_out() {
    List<String> plan = words(packet(Packet.FIRE_AND_SAFETY, PaperSize.LETTER).pages().get(0));
    assertThat(plan)
        .anyMatch(w -> w.startsWith("kept shut: to the main doors"))
        .anyMatch(w -> w.startsWith("way out: from the street"))
        .noneMatch(w -> w.startsWith("way out: to the main doors"))
        .anyMatch(w -> w.startsWith("way out: main doors"));
  }

  private static String all(PrintedPacket packet) {
    return packet.pages().stream()
        .map(p -> String.join(" ", words(p)))
        .collect(Collectors.joining(" "));
  }

  @Test
  void the_clients_first_page_shows_the_floor_as_it_should_look_and_never_says_will() {
    for (PaperSize paper : List.of(PaperSize.LETTER, PaperSize.A4)) {
      PrintedPage first = packet(Packet.CLIENT, paper).pages().get(0);
      List<Raster> pictures =
          first.drawing().plain().stream()
              .filter(Raster.class::isInstance)
              .map(Raster.class::cast)
              .toList();
      assertThat(pictures).hasSize(3);
      assertThat(pictures.get(0).at().width()).isGreaterThan(100);
      assertThat(pictures.stream().mapToInt(r -> r.picture().jpeg().length).sum())
          .isLessThan(1_500_000);
      assertThat(String.join(" ", words(first)))
          .contains("the sample panel")
          .doesNotContainPattern("\\bwill\\b");
      assertThat(PacketSet.of(Packet.CLIENT, HALL.job(paper)).pages().get(0).drawing().plain())
          .isEqualTo(first.drawing().plain());
    }
  }

  @Test
  void places_of_a_kind_are_told_by_their_number_when_they_are_many() {
    SheetSamples depot = SheetSamples.sample("depot-floor");
    List<PrintedPage> pages = depot.packet(Packet.CLIENT, PaperSize.A4).pages();
    assertThat(String.join(" ", words(pages.get(0)))).contains("90 filled spots: each takes");
    assertThat(pages).hasSizeLessThanOrEqualTo(4);
  }

  @Test
  void an_office_gets_crowds_by_their_number_and_no_number_broken_over_lines() {
    SheetSamples depot = SheetSamples.sample("depot-floor");
    List<PrintedPage> pages = depot.packet(Packet.OFFICE, PaperSize.A4).pages();
    List<String> all = pages.stream().flatMap(p -> words(p).stream()).toList();
    assertThat(pages).hasSizeLessThanOrEqualTo(14);
    assertThat(all).contains("patch, 90 of them").noneMatch(w -> w.matches("\\.\\d+"));
  }

  @Test
  void work_of_the_whole_job_names_no_floor_area() {
    packet(Packet.CREW, PaperSize.LETTER).pages().stream()
        .flatMap(p -> words(p).stream())
        .forEach(w -> assertThat(w).doesNotStartWith(":").doesNotContain("· ,"));
  }

  static Stream<Arguments> packets() {
    return Stream.of(Packet.values())
        .flatMap(
            p -> Stream.of(PaperSize.LETTER, PaperSize.A4).map(paper -> Arguments.of(p, paper)));
  }

  /** The crew's pages carry drawings of the sheets and have tests of their own. */
  static Stream<Arguments> packetsButTheCrews() {
    return packets().filter(a -> a.get()[0] != Packet.CREW);
  }

  private static List<String> words(PrintedPage page) {
    return TextBox.of(page.drawing()).stream().map(TextBox::words).toList();
  }

  @ParameterizedTest
  @MethodSource("packets")
  void every_page_says_its_place_in_its_packet(Packet packet, PaperSize paper) {
    List<PrintedPage> pages = packet(packet, paper).pages();
    String called = Words.english().say(packet.word());
    assertThat(pages).isNotEmpty();
    for (int i = 0; i < pages.size(); i++) {
      assertThat(words(pages.get(i)))
          .contains(called + ", page " + (i + 1) + " of " + pages.size(), "Tram Hall Library");
    }
  }

  @ParameterizedTest
  @MethodSource("packets")
  void no_unit_of_the_other_system_stands_on_any_page(Packet packet, PaperSize paper) {
    assertThat(OtherUnits.on(packet(packet, paper).pages(), paper))
        .as("%s on %s", packet, paper)
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("packetsButTheCrews")
  void no_page_but_the_last_is_under_two_fifths_full(Packet packet, PaperSize paper) {
    List<PrintedPage> pages = packet(packet, paper).pages();
    List<String> empty = new ArrayList<>();
    for (PrintedPage page : pages.subList(0, pages.size() - 1)) {
      Bounds body = frame(page, paper).body();
      double lowest =
          page.drawing().plain().stream()
              .map(i -> i.reach().maxY())
              .filter(y -> y <= body.maxY())
              .max(Double::compare)
              .orElse(0.0);
      if ((lowest - body.minY()) / body.height() < 0.4) {
        empty.add(page.name());
      }
    }
    assertThat(empty).isEmpty();
  }

  /** Letters within signs are drawn with them and count as signs. */
  @ParameterizedTest
  @MethodSource("packetsButTheCrews")
  void a_packet_has_at_most_four_type_sizes_and_none_under_ten_points(
      Packet packet, PaperSize paper) {
    Set<Double> sizes = new TreeSet<>();
    packet(packet, paper).pages().stream()
        .flatMap(p -> p.drawing().inks().stream())
        .filter(i -> !(i instanceof Symbol))
        .flatMap(i -> i.parts(Bounds.EMPTY).stream())
        .filter(Text.class::isInstance)
        .forEach(t -> sizes.add(Math.round(((Text) t).style().size() * 72 / 2.54) / 10.0));
    assertThat(sizes).hasSizeLessThanOrEqualTo(4).allMatch(s -> s >= 10);
  }

  @ParameterizedTest
  @MethodSource("packets")
  void no_two_labels_lie_on_each_other_and_all_words_are_inside(Packet packet, PaperSize paper) {
    List<String> faults = new ArrayList<>();
    for (PrintedPage page : packet(packet, paper).pages()) {
      Bounds frame = frame(page, paper).frame().grown(0.01);
      List<TextBox> boxes = TextBox.of(page.drawing());
      for (int i = 0; i < boxes.size(); i++) {
        Bounds b = boxes.get(i).bounds();
        if (!frame.contains(new Vec(b.minX(), b.minY()))
            || !frame.contains(new Vec(b.maxX(), b.maxY()))) {
          faults.add(page.name() + " outside: " + boxes.get(i).words());
        }
        for (int j = i + 1; j < boxes.size(); j++) {
          if (boxes.get(i).overlaps(boxes.get(j))) {
            faults.add(page.name() + ": " + boxes.get(i).words() + " / " + boxes.get(j).words());
          }
        }
      }
    }
    assertThat(faults).isEmpty();
  }

  private static PageFrame frame(PrintedPage page, PaperSize paper) {
    Bounds b = page.drawing().bounds();
    return b.width() > b.height() ? PageFrame.landscape(paper) : PageFrame.portrait(paper);
  }
}
