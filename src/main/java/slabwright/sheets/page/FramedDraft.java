package slabwright.sheets.page;

import java.util.List;

/**
 * A page of a packet with what it is set by: pages of one packet may stand or lie.
 *
 * @param context whose frame is a packet's
 */
public record FramedDraft(SheetContext context, PageDraft draft) {
  public static List<FramedDraft> all(SheetContext context, List<PageDraft> drafts) {
    return drafts.stream().map(d -> new FramedDraft(context, d)).toList();
  }
}
