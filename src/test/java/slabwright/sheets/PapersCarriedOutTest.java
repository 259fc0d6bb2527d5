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
        .collect(Collectors.joining(" "));
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
    assertThat(alone.replaceAll("\\s+", " ")).contains(nobody).doesNotContain(reads);
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
}
