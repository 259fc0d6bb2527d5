package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slabwright.drawing.Text;
import slabwright.inlay.stencil.Stencil;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.units.QuantityFormat;
import slabwright.words.Words;
import slabwright.work.handover.SupplyLine;

/**
 * The day page says how much of what is laid. Coverages, losses, kits and grit are read off the
 * example book by hand.
 */
class CrewAmountsTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();
  private static final double FLUID_OUNCES = 128;

  private static String crew() {
    return HALL.packet(Packet.CREW, PaperSize.LETTER).pages().stream()
        .map(CrewAmountsTest::words)
        .collect(Collectors.joining(" "))
        .replace('\u00a0', ' ');
  }

  private static String words(PrintedPage page) {
    return page.drawing().plain().stream()
        .filter(Text.class::isInstance)
        .map(t -> ((Text) t).words())
        .collect(Collectors.joining(" "));
  }

  private static String phone() {
    return CrewPacket.html(HALL.job(PaperSize.LETTER)).replace('\u00a0', ' ');
  }

  private static double squareFeet(int area) {
    return HALL.results().get(area).takeoff().net().area() / QuantityFormat.SQUARE_FOOT_MM2;
  }

  private static int count(String said, String words) {
    return (int) Pattern.compile(Pattern.quote(words)).matcher(said).results().count();
  }

  /** 300 sq ft/gal and a tenth lost: the dye of the whole hall and the sealer outdoors. */
  @Test
  void each_coat_of_the_whole_floor_says_its_gallons_with_the_loss_on_paper_and_phone() {
    for (int area : List.of(0, 1)) {
      String said =
          String.format(
              Locale.ROOT,
              "For this coat, with the usual loss: %.2f gal.",
              squareFeet(area) / 300 / 0.9);
      assertThat(count(crew(), said)).as(said).isEqualTo(2);
      assertThat(count(phone(), said)).as(said).isEqualTo(2);
    }
  }

  /** 450 sq ft/gal and a quarter lost, three coats. */
  @Test
  void each_stencil_says_its_dye_and_color_and_the_ounces_of_a_coat() {
    List<Stencil> stencils = HALL.results().get(0).inlays().get(0).plan().stencils().stencils();
    assertThat(stencils).hasSize(3);
    for (Stencil s : stencils) {
      double feet = s.openings().area() / QuantityFormat.SQUARE_FOOT_MM2;
      double each = feet / 450 / 0.75 * FLUID_OUNCES;
      // the second one's first coat is on a day of its own
      int together = s.equals(stencils.get(1)) ? 2 : 3;
      String said =
          String.format(
              Locale.ROOT, ": %.1f fl oz a coat, %.1f fl oz in all,", each, together * each);
      assertThat(crew()).contains(said);
      assertThat(phone()).contains(said);
    }
    assertThat(phone()).contains("Solvent dye for graphics (invented), orange-brown: ");
  }

  /** Kits of one gallon are mixed whole: what the fourth is not laid of is mixed too. */
  @Test
  void each_batch_says_what_is_mixed_and_the_last_how_much_of_it_is_laid() {
    String said = phone();
    assertThat(count(said, "; mix 1.00 gal, of which 0.55 gal is laid")).isEqualTo(2);
    assertThat(count(said, "; mix 1.00 gal")).isEqualTo(8);
  }

  /**
   * By hand: 1 h 17 min of cut-in and 75 min of rolling by two, over 1,635 sq ft, after 6 min of
   * mixing: 460 sq ft of a gallon take 43 min. Before, the fourth was mixed at 8:59 and set at
   * 9:56, twelve minutes before the row ends.
   */
  @Test
  void batches_go_onto_the_floor_when_it_is_reached_by_the_hours_of_their_row() {
    assertThat(phone())
        .contains("Batch 1 on the floor at lane 1, about 7:35")
        .contains("Batch 2 on the floor at lane 18, about 8:20")
        .contains("Batch 3 on the floor at lane 26, about 9:00")
        .contains("Batch 4 on the floor at lane 33, about 9:45");
    assertThat(crew()).contains("cut-in included, 2 rolling").doesNotContain("rolling alone");
  }

  /** 4 oz to the gallon, in the last coat alone, and in all that is mixed. */
  @Test
  void the_last_coat_and_no_other_says_how_much_grit_goes_into_it() {
    String said = phone();
    assertThat(count(said, "; 4.0 oz grit")).isEqualTo(4);
    assertThat(count(said, "4.0 oz to each gal, 1.00 lb in all")).isEqualTo(1);
    String outdoors =
        String.format(
            Locale.ROOT, "4.0 oz to each gal, %.1f oz in all", squareFeet(1) / 300 / 0.9 * 4);
    assertThat(count(said, outdoors)).isEqualTo(1);
    assertThat(count(said, "Stir Clear polymer grit")).isEqualTo(2);
  }

  /** Summed from the crew's own words: totals in the last coats, in ounces or pounds. */
  @Test
  void grit_is_bought_by_the_name_the_crew_has_and_no_less_than_the_crew_stirs_in() {
    Matcher m =
        Pattern.compile("Stir (.+?) into this coat: .+? each gal, ([0-9.]+) (oz|lb) in all")
            .matcher(phone());
    BigDecimal ounces = BigDecimal.ZERO;
    String name = "";
    while (m.find()) {
      name = m.group(1);
      BigDecimal told = new BigDecimal(m.group(2));
      ounces = ounces.add(m.group(3).equals("lb") ? told.multiply(new BigDecimal(16)) : told);
    }
    assertThat(name).isEqualTo("Clear polymer grit (invented)");
    String called = name + ", for the last coat";
    SupplyLine grit =
        SupplyLine.of(HALL.job(PaperSize.LETTER).work()).stream()
            .filter(s -> Words.english().say(s.what()).equals(called))
            .findFirst()
            .orElseThrow();
    assertThat(Words.english().say(grit.unit().orElseThrow())).isEqualTo("lb");
    BigDecimal bought = grit.number().maybe().orElseThrow().multiply(new BigDecimal(16));
    assertThat(bought).isBetween(ounces, ounces.add(new BigDecimal("0.5")));
  }

  @Test
  void a_job_in_meters_says_liters_and_grams() {
    String said = CrewPacket.html(HALL.job(PaperSize.A4)).replace('\u00a0', ' ');
    String sealer =
        String.format(
            Locale.ROOT,
            "For this coat, with the usual loss: %.2f L.",
            squareFeet(1) / 300 / 0.9 * 3.785411784);
    assertThat(said).contains(sealer).contains("30 g to each L").contains("mL a coat");
  }
}
