package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;

/** Sheets of tables alone, in as many columns as the paper has room for. */
public final class ColumnPages {
  private ColumnPages() {}

  public static List<PageDraft> of(SheetContext context, PageDraft draft, List<Block> blocks) {
    double width = context.page().width();
    if (context.page().form() == PageFrame.Form.PORTRAIT) {
      return of(context, draft, 1, blocks);
    }
    return of(context, draft, width < 300 ? 2 : width < 500 ? 3 : 4, blocks);
  }

  /** Fewer, wider columns, for papers that people read and sign. */
  public static List<PageDraft> wide(SheetContext context, PageDraft draft, List<Block> blocks) {
    double width = context.page().width();
    return of(
        context, draft, width < 300 && context.page().ofPacket() ? 1 : width < 500 ? 2 : 3, blocks);
  }

  /** In one column, without a last page of a few lines where closer lines have room for them. */
  public static List<PageDraft> saving(SheetContext context, PageDraft draft, List<Block> blocks) {
    return drafts(context, draft, ColumnLayout.saving(context.page(), blocks));
  }

  /** In so many columns, filled one after the other. */
  public static List<PageDraft> of(
      SheetContext context, PageDraft draft, int columns, List<Block> blocks) {
    return drafts(context, draft, ColumnLayout.whole(context.page(), columns, blocks));
  }

  private static List<PageDraft> drafts(
      SheetContext context, PageDraft draft, List<List<Ink>> pages) {
    List<PageDraft> drafts = new ArrayList<>();
    for (List<Ink> inks : pages) {
      drafts.add(drafts.isEmpty() ? draft.withInks(inks) : draft.continued(inks, context.words()));
    }
    return drafts;
  }
}
