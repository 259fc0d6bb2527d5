package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;

/** Sheets of tables alone, in as many columns as the paper has room for. */
public final class ColumnPages {
  private ColumnPages() {}

  public static List<PageDraft> of(PageFrame page, PageDraft draft, List<Block> blocks) {
    double width = page.paper().width();
    return of(page, draft, width < 300 ? 2 : width < 500 ? 3 : 4, blocks);
  }

  /** Fewer, wider columns, for papers that people read and sign. */
  public static List<PageDraft> wide(PageFrame page, PageDraft draft, List<Block> blocks) {
    return of(page, draft, page.paper().width() < 500 ? 2 : 3, blocks);
  }

  private static List<PageDraft> of(
      PageFrame page, PageDraft draft, int columns, List<Block> blocks) {
    List<PageDraft> drafts = new ArrayList<>();
    for (List<Ink> inks : ColumnLayout.whole(page, columns, blocks)) {
      drafts.add(drafts.isEmpty() ? draft.withInks(inks) : draft.continued(inks));
    }
    return drafts;
  }
}
