package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.drawing.Text;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.PrintedPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.words.Words;
import slabwright.work.WorkPlan;
import slabwright.work.WorkSamples;

/** What a reader needs to do the work from the paper alone, and to come home from it. */
class PapersCarriedOutTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();

  private static List<String> labels(PrintedPage page) {
    return page.drawing().plain().stream()
        .filter(Text.class::isInstance)
        .map(t -> ((Text) t).words())
        .toList();
  }

  private static String words(PrintedPacket packet) {
    return packet.pages().stream()
        .flatMap(p -> labels(p).stream())
        .collect(Collectors.joining(" "))
        .replaceAll("[\\s\u00a0\u202f]+", " ");
  }

  private static Words in(String language) {
    return Words.of(Locale.forLanguageTag(language));
  }

  private static PrintedPacket with(Packet packet, int people, Words words) {
    WorkPlan plan =
        WorkSamples.plan(
            HALL.site(), WorkSamples.bookWith("crew", "", "people", String.valueOf(people)));
    return PacketSet.of(
        packet,
        new PacketContents(
            HALL.site(), HALL.results(), plan, PaperSize.LETTER, SheetSamples.DAY, words));
  }

  /** The yard door has a plan's edge, a socket and an extinguisher close by. */
  @ParameterizedTest
  @CsvSource({"en, LETTER", "en, A4", "es, LETTER", "es, A4"})
  void each_way_out_of_a_floor_with_solvent_has_its_word_on_the_fire_plan(
      String language, PaperSize paper) {
    Words said = in(language);
    String word = said.say("sheets.fire-plan.way-out-alone");
    List<String> plan = labels(HALL.packet(Packet.FIRE_AND_SAFETY, paper, said).pages().get(0));
    // main doors and yard door of the hall, the street of the terrace
    assertThat(plan.stream().filter(w -> w.startsWith(word))).hasSize(3);
  }

  @ParameterizedTest
  @CsvSource({"en, reads a gas meter", "es, lee un medidor"})
  void to_who_lays_solvent_alone_no_list_says_that_somebody_reads_the_meter(
      String language, String reads) {
    String alone = words(with(Packet.FIRE_AND_SAFETY, 1, in(language)));
    String nobody = in(language).say("work.ignition-check.meter-by-nobody", 15);
    assertThat(alone).contains(nobody).doesNotContain(reads);
    assertThat(words(with(Packet.FIRE_AND_SAFETY, 3, in(language))))
        .contains("B " + reads)
        .doesNotContain(nobody);
  }

  /** "Salida" is the way out, and the word on an escape plan. */
  @Test
  void in_spanish_a_trench_above_the_slab_is_not_called_a_way_out() {
    assertThat(words(HALL.packet(Packet.CREW, PaperSize.LETTER, in("es"))))
        .contains("drain trench, más alta que la losa")
        .doesNotContain("trench, salida");
  }

  /** The day page names a window and a hose to far places that it does not draw. */
  @ParameterizedTest
  @CsvSource({"tram-hall, en", "tram-hall, es", "bike-workshop, en"})
  void a_crew_with_solvent_holds_the_plan_of_its_air_and_a_page_to_write_readings_on(
      String sample, String language) {
    Words said = in(language);
    SheetSamples of = SheetSamples.sample(sample);
    List<PrintedPage> crew = of.packet(Packet.CREW, PaperSize.LETTER, said).pages();
    List<String> plan = named(crew, said.say("sheets.meter-page.title"));
    List<String> onFirePlan =
        labels(of.packet(Packet.FIRE_AND_SAFETY, PaperSize.LETTER, said).pages().get(0));
    String wayOut = said.say("sheets.fire-plan.way-out-alone");
    assertThat(plan.stream().filter(w -> w.startsWith(wayOut)).count())
        .isEqualTo(onFirePlan.stream().filter(w -> w.startsWith(wayOut)).count());
    if (sample.equals("tram-hall")) {
      assertThat(plan).contains("window for the fan");
      assertThat(named(crew, said.say("sheets.meter-page.log")))
          .contains("M1, ppm", "M2, ppm", "M3, ppm")
          .doesNotContain("M4, ppm");
    }
    // every page of a day with solvent says where it is
    List<PrintedPage> leave =
        crew.stream()
            .filter(p -> String.join(" ", labels(p)).contains("LEL"))
            .filter(p -> p.drawing().bounds().height() > p.drawing().bounds().width())
            .toList();
    assertThat(leave)
        .isNotEmpty()
        .allSatisfy(
            p ->
                assertThat(String.join(" ", labels(p)))
                    .contains(said.say("sheets.crew-cautions.meter-page")));
  }

  private static List<String> named(List<PrintedPage> pages, String title) {
    List<PrintedPage> found = pages.stream().filter(p -> p.title().equals(title)).toList();
    assertThat(found).as(title).hasSize(1);
    return labels(found.get(0));
  }

  /** Nothing is handed out that is of no use. */
  @Test
  void a_crew_without_solvent_has_no_page_of_the_meter() {
    String title = in("en").say("sheets.meter-page.title");
    assertThat(SheetSamples.sample("depot-floor").packet(Packet.CREW, PaperSize.A4).pages())
        .extracting(PrintedPage::title)
        .doesNotContain(title);
  }

  /** Whoever is late goes by the wait: the printed hours leave less than filler takes to set. */
  @Test
  void a_day_page_tells_how_long_what_follows_waits_at_least() {
    String crew = words(HALL.packet(Packet.CREW, PaperSize.LETTER));
    assertThat(crew)
        .containsPattern("Fill joints, cracks and spalls(?:(?!Grind).)*Then wait at least 50 min")
        .containsPattern("coat 1 of 2 sprayer(?:(?!Dec 11).)*Then wait at least 3 h")
        .containsPattern("1.5 fl oz a coat(?:(?!Dec 14).)*Then wait at least 20 min");
  }

  /** Dye does not come out again, and the client has to be there before it goes on. */
  @ParameterizedTest
  @CsvSource({"en, light gray", "es, gris claro"})
  void a_sample_panel_has_its_dyes_its_place_and_the_hour_the_client_signs(
      String language, String colour) {
    Words said = in(language);
    String crew = words(HALL.packet(Packet.CREW, PaperSize.LETTER, said));
    String client = words(HALL.packet(Packet.CLIENT, PaperSize.LETTER, said));
    String from = language.equals("en") ? "Thu, Dec 10, 1:00 PM" : "jue 10 dic. 13:00";
    assertThat(client).contains(from);
    assertThat(crew)
        .contains(said.say("sheets.crew-sample.place"))
        .contains(said.say("sheets.crew-sample.signed", from))
        .contains("Water-borne dye for the floor (invented), " + colour);
  }

  /** The outdoor sealer's first lane lies along it. */
  @Test
  void whoever_works_beside_an_open_edge_is_told_of_it_on_that_day() {
    String edge = "Open edge B, Terrace: if it drops, a barrier first";
    for (PrintedPage page : HALL.packet(Packet.CREW, PaperSize.LETTER).pages()) {
      String said = String.join(" ", labels(page));
      if (said.contains("Today, in this order")) {
        assertThat(said.contains(edge)).as(page.title()).isEqualTo(said.contains("Terrace"));
      }
    }
  }

  @Test
  void a_client_is_promised_a_panel_only_where_the_job_makes_one() {
    assertThat(words(SheetSamples.sample("depot-floor").packet(Packet.CLIENT, PaperSize.A4)))
        .contains("no two floors look alike")
        .doesNotContain("panel");
    assertThat(words(HALL.packet(Packet.CLIENT, PaperSize.LETTER)))
        .contains("You approve a panel on this very slab");
  }

  /** The rules stand in full on that very paper. */
  @Test
  void without_solvent_the_safety_paper_sends_nobody_elsewhere_and_has_nothing_to_tick() {
    String depot =
        words(SheetSamples.sample("depot-floor").packet(Packet.FIRE_AND_SAFETY, PaperSize.A4));
    assertThat(depot)
        .contains("Silica, floor grinder")
        .doesNotContain("stands in the office packet")
        .doesNotContain("tick off");
    assertThat(words(HALL.packet(Packet.FIRE_AND_SAFETY, PaperSize.LETTER)))
        .contains("stands in the office packet");
  }

  /** A shop that looks for the other panel of a seam calls, or cuts it twice. */
  @Test
  void the_key_of_a_stencil_of_one_panel_speaks_of_no_seam() {
    List<PrintedPage> shop = HALL.packet(Packet.SIGN_SHOP, PaperSize.LETTER).pages();
    for (PrintedPage page : shop.subList(2, 5)) {
      String said = String.join(" ", labels(page));
      boolean alone = page.title().startsWith("Stencil 2");
      assertThat(said.contains("seam: both panels")).as(page.title()).isEqualTo(!alone);
      assertThat(said.contains("witness cross")).as(page.title()).isEqualTo(!alone);
    }
  }

  /** Two graphics of a job both have a panel A. */
  @Test
  void panels_are_marked_with_their_graphic_and_the_van_has_what_setting_out_takes() {
    assertThat(words(HALL.packet(Packet.SIGN_SHOP, PaperSize.LETTER)))
        .contains("each marked with its graphic, stencil and letter");
    assertThat(words(HALL.packet(Packet.OFFICE, PaperSize.LETTER)))
        .contains("two tape measures, a chalk line")
        .contains("knee pads");
  }
}
