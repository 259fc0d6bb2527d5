package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.drawing.Text;
import slabwright.drawing.TextBox;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.LanePlan;

/** What a crew can't do from the day page alone hangs on the wall or stands in its rows. */
class CrewPostersTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();

  private static List<PrintedPage> pages(PaperSize paper) {
    return HALL.packet(Packet.CREW, paper).pages();
  }

  private static String words(PrintedPage page) {
    return TextBox.of(page.drawing()).stream()
        .map(TextBox::words)
        .collect(Collectors.joining("\n"))
        .replace('\u00a0', ' ');
  }

  private static List<PrintedPage> of(PaperSize paper, String name) {
    return pages(paper).stream().filter(p -> p.name().matches(name)).toList();
  }

  /** Each name as the plan file has it, read there by hand. */
  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4"})
  void all_that_is_filled_stripped_or_made_level_is_drawn_with_its_name(PaperSize paper) {
    assertThat(of(paper, ".*fill-and-strip-reading-hall"))
        .singleElement()
        .satisfies(
            p ->
                assertThat(words(p))
                    .contains("drain trench", "levelled spot", "pit cover", "old carpet glue")
                    .contains("day joint", "crack at the column", "glass beside the doors"));
    assertThat(of(paper, ".*fill-and-strip-terrace"))
        .singleElement()
        .satisfies(p -> assertThat(words(p)).contains("broken corner"));
    String days = CrewPacket.html(HALL.job(paper));
    assertThat(days)
        .contains("poster Fill and strip")
        .doesNotContain(
            "Fill joints, cracks and spalls<br><span class=\"detail\">poster Hand work");
  }

  /** On the terrace how much aggregate shall show is not chosen: no pass of the plan grinds it. */
  @Test
  void a_floor_of_which_nothing_is_ground_has_no_poster_and_no_list_of_hand_work() {
    assertThat(of(PaperSize.LETTER, ".*hand-work-reading-hall")).isNotEmpty();
    assertThat(of(PaperSize.LETTER, ".*hand-work-terrace")).isEmpty();
    assertThat(pages(PaperSize.LETTER)).noneMatch(p -> words(p).contains("Hand work, Terrace"));
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4"})
  void every_lane_of_a_rolled_coat_has_its_number(PaperSize paper) {
    for (CoatPlan coat :
        HALL.job(paper).work().areas().stream().flatMap(a -> a.coats().stream()).toList()) {
      for (LanePlan lanes : coat.lanes().maybe().flatMap(l -> l).stream().toList()) {
        String title = "Rolling: " + coat.product().shortLabel();
        PrintedPage poster =
            pages(paper).stream().filter(p -> words(p).startsWith(title)).findFirst().orElseThrow();
        List<String> said = Arrays.asList(words(poster).split("\n", -1));
        assertThat(said)
            .as(title)
            .containsAll(
                IntStream.rangeClosed(1, lanes.lanes().size())
                    .mapToObj(Integer::toString)
                    .toList());
      }
    }
  }

  @Test
  void a_sprayed_floor_says_where_to_begin_and_by_which_door_one_comes_out() {
    String said = CrewPacket.html(HALL.job(PaperSize.LETTER));
    assertThat(said.split("Begin farthest from main doors and back out to main doors", -1))
        .hasSize(2 + 1);
  }

  /** Who packs up and leaves, outdoors, is on no floor. */
  @Test
  void every_page_with_work_on_a_floor_shows_where_and_tells_the_whole_floor_beside_a_graphic() {
    List<PrintedPage> days =
        pages(PaperSize.LETTER).stream()
            .takeWhile(p -> p.drawing().bounds().height() > p.drawing().bounds().width())
            .toList();
    assertThat(days).hasSizeGreaterThan(9);
    assertThat(days)
        .filteredOn(p -> !words(p).startsWith("Thursday, Dec 17, continued"))
        .hasSize(days.size() - 1)
        .allSatisfy(
            p -> assertThat(words(p)).as(p.name()).containsPattern("work here|whole floor"));
    assertThat(days)
        .filteredOn(p -> words(p).contains("Roll Water-borne penetrating sealer"))
        .filteredOn(p -> p.title().startsWith("Monday"))
        .isNotEmpty()
        .allSatisfy(p -> assertThat(words(p)).contains("work here", "and the whole floor"));
  }

  /** Over a floor whose last coat was laid on the page before stood "whole floor" on the next. */
  @Test
  void a_page_maps_the_floors_of_its_own_rows_and_none_of_the_pages_before_it() {
    List<PrintedPage> days =
        pages(PaperSize.LETTER).stream()
            .filter(p -> p.title().startsWith("Wednesday, Dec 16"))
            .toList();
    assertThat(days).hasSize(2);
    assertThat(texts(days.get(0))).contains("whole floor", "yard door");
    assertThat(texts(days.get(0))).doesNotContain("from the street");
    assertThat(texts(days.get(1))).contains("whole floor", "from the street");
    assertThat(texts(days.get(1))).doesNotContain("yard door");
  }

  /** Coats of a job that may not start have no lanes on the wall; their numbers stood in rows. */
  @Test
  void no_row_names_a_poster_or_its_lanes_that_the_packet_does_not_hold() {
    List<PrintedPage> stopped =
        PacketSet.of(Packet.CREW, SheetSamples.sample("bike-workshop").job(PaperSize.A4)).pages();
    assertThat(stopped).noneMatch(p -> p.title().startsWith("Rolling"));
    String said = stopped.stream().flatMap(CrewPostersTest::texts).collect(Collectors.joining(" "));
    assertThat(said).contains("Roll Two-part clear topcoat", "Batch 1; mix 3.79 L");
    assertThat(said).contains("Begin farthest from shop door and back out to shop door; nobody");
    assertThat(said).doesNotContain("poster Rolling").doesNotContainPattern("lanes \\d");
    assertThat(pages(PaperSize.LETTER)).anyMatch(p -> p.title().startsWith("Rolling"));
    assertThat(pages(PaperSize.LETTER)).anyMatch(p -> words(p).contains("poster Rolling"));
  }

  @Test
  void what_follows_at_once_still_says_about_when() {
    assertThat(CrewPacket.html(HALL.job(PaperSize.LETTER)))
        .containsPattern(
            ">then</span>.*Roll Water-borne penetrating sealer.*right after it, about 11:0");
  }

  /** Three mists of a minute or two with two waits of 20 min: "15 min" was said. */
  @Test
  void a_row_without_dates_counts_the_waits_between_and_tells_the_one_after() {
    SheetSamples bike = SheetSamples.sample("bike-workshop");
    List<String> said =
        PacketSet.of(Packet.CREW, bike.job(PaperSize.A4)).pages().stream()
            .flatMap(CrewPostersTest::texts)
            .toList();
    int mist =
        IntStream.range(0, said.size())
            .filter(i -> said.get(i).contains("Mist coats"))
            .findFirst()
            .orElseThrow();
    assertThat(said.subList(mist - 2, mist)).contains("45 min");
    assertThat(said).contains("Then wait at least 20 min.");
    assertThat(String.join(" ", said))
        .contains("what follows is begun within 2 d of the first stroke of this");
  }

  private static Stream<String> texts(PrintedPage page) {
    return page.drawing().plain().stream()
        .filter(Text.class::isInstance)
        .map(t -> ((Text) t).words().replace('\u00a0', ' '));
  }
}
