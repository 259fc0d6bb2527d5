package slabwright.work.coat;

import java.util.ArrayList;
import java.util.List;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.Setting;
import slabwright.work.book.ProductKind;
import slabwright.work.book.ShopBook;

/** A finish system to start from, made of the shop book's own products; for a person to change. */
final class FinishSuggestion {
  private FinishSuggestion() {}

  /**
   * Indoors dye, sealer and topcoat; outdoors the outdoor sealer; dye for inlays where there are.
   */
  public static Finish of(FloorArea area, ShopBook book) {
    boolean indoors = area.setting() == Setting.INDOOR;
    List<Finish.Coat> coats = new ArrayList<>();
    if (indoors) {
      add(coats, book, ProductKind.BASE_DYE, Finish.Target.WHOLE_FLOOR);
    }
    if (!area.inlays().isEmpty()) {
      add(coats, book, ProductKind.INLAY_DYE, Finish.Target.INLAY);
    }
    if (indoors) {
      add(coats, book, ProductKind.SEALER, Finish.Target.WHOLE_FLOOR);
      add(coats, book, ProductKind.TOPCOAT, Finish.Target.WHOLE_FLOOR);
    } else {
      add(coats, book, ProductKind.OUTDOOR_SEALER, Finish.Target.WHOLE_FLOOR);
    }
    return new Finish(area.finish().exposure(), coats);
  }

  private static void add(
      List<Finish.Coat> coats, ShopBook book, ProductKind kind, Finish.Target target) {
    book.first(kind)
        .ifPresent(
            p -> coats.add(new Finish.Coat(p.id(), p.spread().coats().maybe().orElse(1), target)));
  }
}
