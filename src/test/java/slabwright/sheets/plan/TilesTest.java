package slabwright.sheets.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.drawing.Symbol;
import slabwright.drawing.TextBox;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.SheetSamples;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.PageFrame;
import slabwright.sheets.page.Paginator;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TitleStripText;
import slabwright.sheets.site.LayoutSheet;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.Spot;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** Floors too large for one page. */
class TilesTest {
  private static final PageFrame A4 = PageFrame.of(PaperSize.A4);
  private static final SheetContext CONTEXT =
      new SheetContext(A4, UnitSystem.METRIC, Words.english());

  private static FloorArea hall(double width, double height) {
    return FloorArea.of(
        "a",
        "Long hall",
        List.of(
            OutlinePiece.wall(Spot.mm(0, 0)),
            OutlinePiece.wall(Spot.mm(width, 0)),
            OutlinePiece.wall(Spot.mm(width, height)),
            OutlinePiece.wall(Spot.mm(0, height))));
  }

  @Test
  void a_floor_too_large_at_1_to_100_is_tiled_with_join_marks() {
    List<PageDraft> drafts = new LayoutSheet(hall(60_000, 9_000), CONTEXT).drafts();
    List<PageDraft> tiles = drafts.stream().filter(d -> d.title().contains("tile")).toList();
    assertThat(tiles).hasSize(3);
    assertThat(tiles).allSatisfy(d -> assertThat(scale(d)).isEqualTo("1:100"));
    assertThat(drafts.get(drafts.size() - 1).title()).endsWith("continued");
  }

  @Test
  void neighbouring_tiles_show_the_same_place_at_their_join_marks() {
    Bounds model = new Bounds(0, 0, 60_000, 12_000);
    PlanTiling plan =
        PlanTiling.of(
            slabwright.drawing.CoordinateFrame.SITE, model, A4.body(), 13, UnitSystem.METRIC);
    Vec right = joins(plan, 0).get(0);
    Vec left = joins(plan, 1).get(0);
    Vec first = plan.view(0, 0).onModel(right);
    Vec second = plan.view(1, 0).onModel(left);
    assertThat(first.distanceTo(second)).isLessThan(0.01);
  }

  /** The join marks of a tile of the top row; of an inner tile those on its left come first. */
  private static List<Vec> joins(PlanTiling plan, int column) {
    return JoinMarks.of(plan, column, 0).stream()
        .filter(Symbol.class::isInstance)
        .map(i -> ((Symbol) i).at())
        .toList();
  }

  @Test
  void every_part_of_the_floor_lies_on_some_tile() {
    Bounds model = new Bounds(0, 0, 61_234, 45_678);
    PlanTiling plan =
        PlanTiling.of(
            slabwright.drawing.CoordinateFrame.SITE, model, A4.body(), 13, UnitSystem.METRIC);
    for (double tx = 0; tx <= 1; tx += 0.05) {
      for (double ty = 0; ty <= 1; ty += 0.05) {
        Vec p = new Vec(model.width() * tx, model.height() * ty);
        assertThat(shown(plan, p)).as("%s", p).isTrue();
      }
    }
  }

  private static boolean shown(PlanTiling plan, Vec p) {
    for (int row = 0; row < plan.down(); row++) {
      for (int column = 0; column < plan.across(); column++) {
        if (plan.field().contains(plan.view(column, row).onPaper(p))) {
          return true;
        }
      }
    }
    return false;
  }

  @Test
  void a_floor_that_fits_is_not_tiled() {
    List<PageDraft> drafts = new LayoutSheet(hall(9_000, 7_000), CONTEXT).drafts();
    assertThat(drafts).hasSize(1);
    assertThat(scale(drafts.get(0))).isEqualTo("1:75");
    assertThat(TextBox.of(Paginator.paginate(drafts, CONTEXT, issue()).get(0).drawing()))
        .extracting(TextBox::words)
        .contains("9.000 m", "7.000 m", "1:75");
  }

  private static TitleStripText issue() {
    return new TitleStripText("Site", "invented", 0, SheetSamples.DAY);
  }

  private static String scale(PageDraft draft) {
    return CONTEXT.words().say(draft.scale().orElseThrow().name());
  }
}
