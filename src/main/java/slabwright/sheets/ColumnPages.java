package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;

/** Sheets of tables alone, in as many columns as the paper has room for. */
final class ColumnPages {
  private ColumnPages() {}

  static List<Draft> of(PageFrame page, Draft draft, List<Block> blocks) {
    double width = page.paper().width();
    return of(page, draft, width < 300 ? 2 : width < 500 ? 3 : 4, blocks);
  }

  /** Fewer, wider columns, for papers that people read and sign. */
  static List<Draft> wide(PageFrame page, Draft draft, List<Block> blocks) {
    return of(page, draft, page.paper().width() < 500 ? 2 : 3, blocks);
  }

  private static List<Draft> of(PageFrame page, Draft draft, int columns, List<Block> blocks) {
    List<Draft> drafts = new ArrayList<>();
    for (List<Ink> inks : Columns.whole(page, columns, blocks)) {
      drafts.add(drafts.isEmpty() ? draft.withInks(inks) : draft.continued(inks));
    }
    return drafts;
  }
}
