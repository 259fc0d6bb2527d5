package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.words.Words;

/**
 * What must hold of every page of every packet: the tram hall on Letter and A4 in the suite, all
 * samples, papers and languages in the long one.
 */
class PageRulesTest {
  private static final List<String> SAMPLES = List.of("tram-hall", "bike-workshop", "depot-floor");

  static Stream<Arguments> usual() {
    return Stream.of(PaperSize.LETTER, PaperSize.A4)
        .flatMap(
            paper ->
                Stream.of(Packet.values()).map(p -> Arguments.of("tram-hall", p, paper, "en")));
  }

  static Stream<Arguments> everything() {
    List<Arguments> all = new ArrayList<>();
    for (String sample : SAMPLES) {
      for (PaperSize paper : List.of(PaperSize.LETTER, PaperSize.A4, PaperSize.TABLOID)) {
        for (Packet p : Packet.values()) {
          all.add(Arguments.of(sample, p, paper, "en"));
          all.add(Arguments.of(sample, p, paper, "es"));
        }
      }
    }
    return all.stream();
  }

  private static List<PrintedPage> pages(
      String sample, Packet packet, PaperSize paper, String language) {
    return SheetSamples.sample(sample)
        .packet(packet, paper, Words.of(Locale.forLanguageTag(language)))
        .pages();
  }

  private static List<String> all(List<PrintedPage> pages, Function<PageRules, List<String>> rule) {
    return pages.stream().flatMap(p -> rule.apply(new PageRules(p)).stream()).toList();
  }

  private static void hold(List<PrintedPage> pages) {
    assertThat(all(pages, PageRules::inkOutside)).isEmpty();
    assertThat(all(pages, PageRules::wordsOnWords)).isEmpty();
    assertThat(all(pages, PageRules::wordsOnSigns)).isEmpty();
    assertThat(all(pages, PageRules::wordsHidden)).isEmpty();
    assertThat(all(pages, PageRules::wordsCutShort)).isEmpty();
    Set<Long> sizes = new TreeSet<>();
    pages.forEach(p -> sizes.addAll(new PageRules(p).sizes()));
    assertThat(sizes).hasSizeLessThanOrEqualTo(4).allMatch(s -> s >= 100);
    assertThat(nearlyEmpty(pages)).isEmpty();
  }

  /** Pages under 40 % full; the last may be. */
  private static List<String> nearlyEmpty(List<PrintedPage> pages) {
    List<String> empty = new ArrayList<>();
    for (PrintedPage page : pages.subList(0, Math.max(0, pages.size() - 1))) {
      double full = new PageRules(page).full();
      if (full < 0.4) {
        empty.add(page.name() + " " + Math.round(full * 100) + " %");
      }
    }
    return empty;
  }

  static Stream<Arguments> otherSamples() {
    return Stream.of("bike-workshop", "depot-floor")
        .flatMap(sample -> Stream.of(Packet.values()).map(p -> Arguments.of(sample, p)));
  }

  @ParameterizedTest
  @MethodSource("otherSamples")
  void no_page_of_the_other_samples_is_nearly_empty_but_the_last(String sample, Packet packet) {
    assertThat(nearlyEmpty(pages(sample, packet, PaperSize.A4, "en"))).isEmpty();
  }

  @Test
  void no_words_of_a_packet_are_cut_short_in_spanish_on_letter() {
    for (String sample : List.of("tram-hall", "bike-workshop")) {
      for (Packet packet : List.of(Packet.SIGN_SHOP, Packet.OFFICE)) {
        List<PrintedPage> pages = pages(sample, packet, PaperSize.LETTER, "es");
        assertThat(all(pages, PageRules::wordsCutShort)).isEmpty();
        assertThat(all(pages, PageRules::wordsOnWords)).isEmpty();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("usual")
  void every_page_can_be_read_and_is_worth_its_paper(
      String sample, Packet packet, PaperSize paper, String language) {
    hold(pages(sample, packet, paper, language));
  }

  @Tag("long")
  @ParameterizedTest
  @MethodSource("everything")
  void every_page_of_every_sample_in_every_language_can_be_read(
      String sample, Packet packet, PaperSize paper, String language) {
    hold(pages(sample, packet, paper, language));
  }

  @Test
  void a_client_signs_on_the_page_that_shows_what_is_signed() {
    for (PaperSize paper : List.of(PaperSize.LETTER, PaperSize.A4)) {
      List<PrintedPage> pages = pages("tram-hall", Packet.CLIENT, paper, "en");
      assertThat(pages).hasSizeLessThanOrEqualTo(4);
      for (PrintedPage page : pages) {
        String words = new PageRules(page).words();
        if (words.contains("signature and name")) {
          assertThat(words).containsAnyOf("Dye can't be taken out", "For all of the above");
        }
      }
      assertThat(pages.stream().map(p -> new PageRules(p).words()))
          .anyMatch(
              w ->
                  w.contains("signature and name")
                      && (w.contains("7′ 10 1/2″") || w.contains("2.400 m wide")));
    }
  }

  @Test
  void the_fire_form_is_signed_where_its_numbers_stand_in_spanish_too() {
    for (String language : List.of("en", "es")) {
      List<PrintedPage> pages =
          pages("tram-hall", Packet.FIRE_AND_SAFETY, PaperSize.LETTER, language);
      String signature = language.equals("en") ? "Fire authority" : "Autoridad de bomberos";
      List<String> signed =
          pages.stream()
              .map(p -> new PageRules(p).words())
              .filter(w -> w.contains(signature))
              .toList();
      assertThat(signed).isNotEmpty().allMatch(w -> w.contains("29 CFR 1926.1202"));
    }
  }

  @Test
  void the_middle_of_the_graphic_is_told_from_one_origin_on_every_paper() {
    String origin = "from the middle of main doors straight in 7′ 2″";
    assertThat(
            pages("tram-hall", Packet.CLIENT, PaperSize.LETTER, "en").stream()
                .map(p -> new PageRules(p).words()))
        .anyMatch(w -> w.contains(origin));
    String poster =
        pages("tram-hall", Packet.CREW, PaperSize.LETTER, "en").stream()
            .filter(p -> p.name().contains("setting-out"))
            .map(p -> new PageRules(p).words())
            .findFirst()
            .orElseThrow();
    assertThat(poster).contains("middle of main doors", "Measure 7′ 2″");
  }

  @Test
  void no_page_says_first_over_words_that_say_as_you_go() {
    List<String> rolled =
        pages("tram-hall", Packet.CREW, PaperSize.LETTER, "en").stream()
            .map(p -> new PageRules(p).words())
            .filter(w -> w.contains("cut in as you go"))
            .toList();
    assertThat(rolled)
        .isNotEmpty()
        .allMatch(w -> w.contains("Cut in as you go"))
        .noneMatch(w -> w.contains("Cut in first"));
  }

  @Tag("long")
  @Test
  void a_large_floor_is_one_poster_whose_numbers_all_stand_on_it_and_two_pages_of_list() {
    // On the paper that its plan asks for: on A4 150 numbers do not fit at any standard scale.
    List<PrintedPage> pages = withoutFilling(pages("depot-floor", Packet.CREW, PaperSize.A3, "en"));
    assertThat(pages).hasSizeLessThanOrEqualTo(5);
    String poster = new PageRules(pages.get(1)).words();
    for (int n = 1; n <= 150; n++) {
      assertThat(poster).as("number %s", n).containsPattern("(^| )" + n + " ");
    }
    assertThat(new PageRules(pages.get(2)).words())
        .contains("foot of column: 45 places, each 2.000 m");
  }

  @Tag("long")
  @Test
  void a_large_floor_on_small_paper_is_four_posters_that_have_all_numbers_between_them() {
    List<PrintedPage> pages = withoutFilling(pages("depot-floor", Packet.CREW, PaperSize.A4, "en"));
    List<PrintedPage> tiles = pages.stream().filter(p -> p.title().contains("tile")).toList();
    assertThat(tiles).hasSizeBetween(2, 4);
    assertThat(pages).hasSizeLessThanOrEqualTo(8);
    String all = tiles.stream().map(p -> new PageRules(p).words()).collect(Collectors.joining(" "));
    for (int n = 1; n <= 150; n++) {
      assertThat(all).as("number %s", n).containsPattern("(^| )" + n + " ");
    }
  }

  /** What is filled has a poster of its own. */
  private static List<PrintedPage> withoutFilling(List<PrintedPage> pages) {
    return pages.stream().filter(p -> !p.title().startsWith("Fill and strip")).toList();
  }

  @Test
  void no_name_on_the_strip_of_a_fire_page_is_cut() {
    for (String language : List.of("en", "es")) {
      for (PrintedPage page :
          pages("bike-workshop", Packet.FIRE_AND_SAFETY, PaperSize.A4, language)) {
        assertThat(new PageRules(page).words())
            .as(page.name())
            .contains("Spoke Street Bike Workshop", "Spoke Street Cooperative (invented)")
            .doesNotContain("…");
      }
    }
  }
}
