package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.drawing.Text;
import slabwright.drawing.TextBox;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** The pages that the crew reads in Spanish, whose sentences are longer than the English ones. */
class CrewLanguageTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();
  private static final Words SPANISH = Words.of(Locale.forLanguageTag("es"));
  private static final double POINT = 25.4 / 72;

  private static PacketContents job(SheetSamples sample, PaperSize paper) {
    UnitSystem units = paper.inches() ? UnitSystem.FEET_INCHES : UnitSystem.METRIC;
    return new PacketContents(
            sample.site().withUnits(units),
            sample.results(),
            sample.work(sample.site().withUnits(units)),
            paper,
            SheetSamples.DAY,
            Words.english())
        .in(SPANISH);
  }

  private static Stream<Text> texts(PrintedPage page) {
    return page.drawing().plain().stream().filter(Text.class::isInstance).map(Text.class::cast);
  }

  private static String words(PrintedPage page) {
    return texts(page).map(Text::words).collect(Collectors.joining(" "));
  }

  private static void fits(SheetSamples sample, Packet packet, PaperSize paper) {
    List<PrintedPage> pages = PacketSet.of(packet, job(sample, paper)).pages();
    assertThat(pages).isNotEmpty();
    for (PrintedPage page : pages) {
      Bounds inside = page.drawing().bounds().grown(-9.9);
      List<TextBox> boxes = TextBox.of(page.drawing());
      for (TextBox box : boxes) {
        Bounds b = box.bounds();
        assertThat(
                inside.contains(new Vec(b.minX(), b.minY()))
                    && inside.contains(new Vec(b.maxX(), b.maxY())))
            .as("%s on %s: %s", page.name(), paper, box.words())
            .isTrue();
      }
      assertThat(clashes(boxes)).as("%s on %s", page.name(), paper).isEmpty();
      // A title may be cut, as it holds a name of the shop book's; nothing else.
      assertThat(
              texts(page)
                  .map(Text::words)
                  .filter(w -> w.endsWith("…") && !page.title().startsWith(w.replace("…", ""))))
          .as("cut on %s", page.name())
          .isEmpty();
      if (packet == Packet.CREW) {
        assertThat(texts(page).filter(t -> t.style().size() / POINT < 9.999).map(Text::words))
            .as("%s on %s", page.name(), paper)
            .isEmpty();
      }
    }
  }

  private static List<String> clashes(List<TextBox> boxes) {
    List<String> clashes = new ArrayList<>();
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = i + 1; j < boxes.size(); j++) {
        if (boxes.get(i).overlaps(boxes.get(j))) {
          clashes.add(boxes.get(i).words() + " / " + boxes.get(j).words());
        }
      }
    }
    return clashes;
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4"})
  void spanish_crew_pages_hold_all_words_apart_and_at_ten_points(PaperSize paper) {
    fits(HALL, Packet.CREW, paper);
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4"})
  void spanish_fire_and_safety_pages_hold_all_words_apart(PaperSize paper) {
    fits(HALL, Packet.FIRE_AND_SAFETY, paper);
  }

  /** Ten cautions lay over what stands against it, and over its first row. */
  @Test
  void of_a_stopped_job_the_reasons_and_every_row_are_read_in_spanish_too() {
    SheetSamples bike = SheetSamples.sample("bike-workshop");
    fits(bike, Packet.CREW, PaperSize.A4);
    List<PrintedPage> pages = PacketSet.of(Packet.CREW, job(bike, PaperSize.A4)).pages();
    assertThat(words(pages.get(0))).contains("No empiece esta obra", "Detenido, no se hace");
    assertThat(words(pages.get(1))).contains("Hoy, en este orden", "Descargue e instale");
  }

  @Tag("long")
  @ParameterizedTest
  @CsvSource({
    "tram-hall, TABLOID", "tram-hall, A3",
    "bike-workshop, LETTER", "bike-workshop, A4",
    "depot-floor, LETTER", "depot-floor, A4"
  })
  void the_other_samples_and_papers_hold_spanish_words_too(String name, PaperSize paper) {
    SheetSamples sample = name.equals("tram-hall") ? HALL : SheetSamples.sample(name);
    fits(sample, Packet.CREW, paper);
    fits(sample, Packet.FIRE_AND_SAFETY, paper);
  }

  @Test
  void the_first_page_says_in_both_languages_that_no_crew_lead_has_read_the_spanish() {
    for (Packet packet : List.of(Packet.CREW, Packet.FIRE_AND_SAFETY)) {
      List<PrintedPage> pages = PacketSet.of(packet, job(HALL, PaperSize.LETTER)).pages();
      assertThat(words(pages.get(0)))
          .contains("Texto en español aún no leído", "Spanish text not yet read by a");
    }
    assertThat(CrewPacket.html(job(HALL, PaperSize.LETTER)))
        .contains("<html lang=\"es-US\">", "Texto en español aún no leído", "not yet read by a");
    PacketContents english = job(HALL, PaperSize.LETTER).in(Words.english());
    assertThat(words(PacketSet.of(Packet.CREW, english).pages().get(0)))
        .doesNotContain("not yet read");
  }

  @Test
  void days_and_numbers_are_told_as_in_spanish_of_the_americas() {
    List<PrintedPage> pages = PacketSet.of(Packet.CREW, job(HALL, PaperSize.LETTER)).pages();
    assertThat(pages.get(0).title()).matches("\\p{L}+ \\d+ de \\p{L}+");
    Pattern decimalComma = Pattern.compile("\\d,\\d{1,2}(?!\\d)");
    for (PrintedPage page : pages) {
      assertThat(texts(page).map(Text::words).filter(w -> decimalComma.matcher(w).find()))
          .as(page.name())
          .isEmpty();
    }
  }

  /** What a stop says is never less in the crew's language: each number stands there too. */
  @Test
  void spanish_cautions_give_the_same_numbers_as_the_english_ones() {
    PacketContents spanish = job(HALL, PaperSize.LETTER);
    String there = CrewPacket.html(spanish);
    String here = CrewPacket.html(spanish.in(Words.english()));
    assertThat(stopNumbers(there)).isNotEmpty().isEqualTo(stopNumbers(here));
  }

  private static List<String> stopNumbers(String html) {
    Pattern stop = Pattern.compile("<div class=\"stop\">(.*?)</div>", Pattern.DOTALL);
    Pattern number = Pattern.compile("\\d[\\d.,]*");
    return stop.matcher(html)
        .results()
        .flatMap(m -> number.matcher(m.group(1)).results())
        .map(m -> m.group().replaceAll("[.,]$", ""))
        .toList();
  }

  @Test
  void a_stencil_has_its_article_and_a_floor_grinder_one_name_in_Spanish() {
    String phone = CrewPacket.html(job(HALL, PaperSize.LETTER)).replace('\u00a0', ' ');
    assertThat(phone)
        .contains("a través del esténcil 1 de 3", "Coloque el esténcil", "Despegue el esténcil")
        .doesNotContainPattern("(?i)(a través de|coloque|despegue|alrededor de|bordes de) esténcil")
        .contains("pulidora de piso 29")
        .contains("pulidora de piso (floor grinder, 29 in) donde llega");
  }
}
