package slabwright.sheets.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.drawing.Drawing;
import slabwright.drawing.TextBox;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.SampleHall;
import slabwright.sheets.SheetSamples;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.PageFrame;
import slabwright.sheets.page.Paginator;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TitleStripText;
import slabwright.sheets.quantities.QuantitiesSheet;
import slabwright.site.EdgeClass;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/** Sheet 2 and 5 against the take-off they show. */
class HandWorkListTest {
  private static final FloorTakeoff TAKEOFF = FloorTakeoff.of(SampleHall.area());
  private static final ReachAnalysis WAYS = ReachAnalysis.of(TAKEOFF);
  private static final HandWorkList LIST =
      new HandWorkList(WAYS, UnitSystem.FEET_INCHES, Words.english());
  private static final SheetContext CONTEXT =
      new SheetContext(PageFrame.of(PaperSize.TABLOID), UnitSystem.FEET_INCHES, Words.english());

  /** How far a number stands off its edge: 6.4 mm of paper at 3/16 in to the foot. */
  private static final double OFF = 6.4 * 64;

  private static final TitleStripText ISSUE =
      new TitleStripText("Tram Hall", "invented", 3, SheetSamples.DAY);

  private static List<String> words(List<PageDraft> drafts) {
    List<String> all = new ArrayList<>();
    for (PrintedPage p : Paginator.paginate(drafts, CONTEXT, ISSUE)) {
      TextBox.of(p.drawing()).forEach(b -> all.add(b.words()));
    }
    return all;
  }

  @Test
  void all_edges_but_the_way_in_are_listed_once() {
    double listed = LIST.edges().stream().mapToDouble(e -> e.edge().orElseThrow()).sum();
    double wayIn = 9.333 * 304.8;
    assertThat(TAKEOFF.edgeLength(EdgeClass.DOORWAY)).isGreaterThan(wayIn);
    assertThat(listed).isCloseTo(TAKEOFF.edgeLength() - wayIn, offset(0.1));
  }

  @Test
  void the_total_sums_every_length_that_is_listed_and_says_why_it_is_not_the_take_offs() {
    double listed = PrepSheet.numbered(LIST).stream().mapToDouble(e -> e.edge().orElse(0)).sum();
    double along = LIST.along().stream().mapToDouble(e -> e.edge().orElseThrow()).sum();
    assertThat(along).isGreaterThan(20_000);
    List<String> words = words(new PrepSheet(WAYS, CONTEXT).drafts());
    assertThat(words).contains(CONTEXT.length(listed));
    assertThat(String.join(" ", words))
        .contains(
            "not the take-off's: " + CONTEXT.length(along) + " along what lies in the floor",
            "and 9′ 4″ of way in");
  }

  @Test
  void a_booths_number_stands_nearest_to_its_own_booth() {
    for (HandWorkItem item : LIST.edges()) {
      Vec number = item.at().orElseThrow().plus(item.inwards().orElseThrow().times(OFF));
      TAKEOFF.standing().stream()
          .filter(s -> item.words().endsWith(s.mark().name()))
          .forEach(
              own ->
                  assertThat(
                          TAKEOFF.standing().stream()
                              .min(Comparator.comparingDouble(s -> s.region().distanceTo(number))))
                      .as(item.words())
                      .contains(own));
    }
  }

  @Test
  void strips_and_pieces_sum_to_the_hand_work() {
    List<HandWorkItem> all = new ArrayList<>(LIST.edges());
    all.addAll(LIST.along());
    all.addAll(LIST.pieces());
    double listed = all.stream().mapToDouble(p -> p.area().orElseThrow()).sum();
    double hand = TAKEOFF.asFound().hand().area();
    assertThat(listed).isCloseTo(hand, offset(hand * 1e-6 + 100));
  }

  @Test
  void every_number_in_the_list_stands_on_the_plan_too() {
    Drawing page =
        Paginator.paginate(new PrepSheet(WAYS, CONTEXT).drafts(), CONTEXT, ISSUE).get(0).drawing();
    long numbered = PrepSheet.numbered(LIST).size();
    List<String> plan = within(page, CONTEXT.page().field());
    List<String> table = within(page, CONTEXT.page().side());
    for (long n = 1; n <= numbered; n++) {
      assertThat(plan).containsOnlyOnce(Long.toString(n));
      assertThat(table).containsOnlyOnce(Long.toString(n));
    }
  }

  private static List<String> within(Drawing page, Bounds part) {
    return TextBox.of(page).stream()
        .filter(b -> part.contains(b.bounds().middle()))
        .map(TextBox::words)
        .toList();
  }

  @Test
  void sheet_2_says_who_grinds_and_where_the_dust_goes() {
    List<String> words = words(new PrepSheet(WAYS, CONTEXT).drafts());
    assertThat(String.join(" ", words))
        .contains("29 in machine (strip 3″)", "way in: main doors", "crystalline silica");
  }

  @Test
  void quantities_show_the_take_offs_own_numbers() {
    AreaResult result = new AreaResult(TAKEOFF, List.of(), List.of());
    List<String> words =
        words(
            new QuantitiesSheet(
                    result, java.util.Optional.empty(), java.util.Optional.empty(), CONTEXT)
                .drafts());
    assertThat(words)
        .contains(
            CONTEXT.bareArea(TAKEOFF.net().area()),
            CONTEXT.bareArea(TAKEOFF.asFound().machine().area()),
            CONTEXT.length(TAKEOFF.cutIn()),
            CONTEXT.length(TAKEOFF.edgeLength()));
  }
}
