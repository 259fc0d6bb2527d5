package slabwright.work.coat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Setting;
import slabwright.site.Spot;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.work.book.BookSamples;
import slabwright.work.book.ProductKind;
import slabwright.work.book.ShopBook;

/** Of the shop book that comes with the program. */
class FinishSuggestionTest {
  private static final ShopBook BOOK = BookSamples.book();
  private static final FloorArea HALL = FloorArea.of("hall", "Hall", List.of());
  private static final Inlay HERON =
      new Inlay(
          "heron",
          "Heron",
          "heron-ring.svg",
          "",
          Spot.mm(0, 0),
          Length.feet(8),
          0,
          StencilSpec.forRoll(Length.inches(48)));

  private static List<Finish.Coat> coats(FloorArea area) {
    return FinishSuggestion.of(area, BOOK).coats();
  }

  private static Finish.Coat coat(ProductKind kind, Finish.Target target) {
    return coat(
        kind, target, BOOK.first(kind).orElseThrow().spread().coats().maybe().orElseThrow());
  }

  private static Finish.Coat coat(ProductKind kind, Finish.Target target, int times) {
    return new Finish.Coat(BOOK.first(kind).orElseThrow().id(), times, target);
  }

  @Test
  void indoors_a_floor_is_dyed_sealed_and_topped() {
    assertThat(coats(HALL.withSetting(Setting.INDOOR)))
        .containsExactly(
            coat(ProductKind.BASE_DYE, Finish.Target.WHOLE_FLOOR, 2),
            coat(ProductKind.SEALER, Finish.Target.WHOLE_FLOOR),
            coat(ProductKind.TOPCOAT, Finish.Target.WHOLE_FLOOR));
  }

  @Test
  void a_graphic_is_dyed_between_the_floors_dye_and_its_sealer() {
    assertThat(coats(HALL.withSetting(Setting.INDOOR).withInlays(List.of(HERON))))
        .startsWith(
            coat(ProductKind.BASE_DYE, Finish.Target.WHOLE_FLOOR, 2),
            coat(ProductKind.INLAY_DYE, Finish.Target.INLAY, 3),
            coat(ProductKind.SEALER, Finish.Target.WHOLE_FLOOR))
        .hasSize(4);
  }

  @Test
  void outdoors_only_the_outdoor_sealer_is_laid() {
    assertThat(coats(HALL.withSetting(Setting.OUTDOOR)))
        .containsExactly(coat(ProductKind.OUTDOOR_SEALER, Finish.Target.WHOLE_FLOOR));
  }
}
