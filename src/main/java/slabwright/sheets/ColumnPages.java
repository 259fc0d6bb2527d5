package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;

/** Sheets of tables alone, in as many columns as the paper has room for. */
final class ColumnPages {
  private ColumnPages() {}

  static List<Draft> of(PageFrame page, Draft draft, List<Block> blocks) {
    return drafts(draft, Columns.whole(page, columns(page), blocks));
  }

  /** The same for what is signed as a whole, on one page where that can be. */
  static List<Draft> together(PageFrame page, Draft draft, List<Block> blocks) {
    return drafts(draft, Columns.together(page, columns(page), blocks));
  }

  private static int columns(PageFrame page) {
    double width = page.paper().width();
    return width < 300 ? 2 : width < 500 ? 3 : 4;
  }

  /** Fewer, wider columns, for papers that people read and sign. */
  static List<Draft> wide(PageFrame page, Draft draft, List<Block> blocks) {
    return drafts(draft, Columns.whole(page, page.paper().width() < 500 ? 2 : 3, blocks));
  }

  private static List<Draft> drafts(Draft draft, List<List<Ink>> pages) {
    List<Draft> drafts = new ArrayList<>();
    for (List<Ink> inks : pages) {
      drafts.add(drafts.isEmpty() ? draft.withInks(inks) : draft.continued(inks));
    }
    return drafts;
  }
}
