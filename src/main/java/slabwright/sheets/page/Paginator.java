package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slabwright.drawing.Drawing;
import slabwright.drawing.Ink;
import slabwright.units.FileName;

/** Numbers drafts through and gives each its header and title strip. */
public final class Paginator {
  private Paginator() {}

  /** Numbers single sheets through. */
  public static List<PrintedPage> paginate(
      List<PageDraft> drafts, SheetContext context, TitleStripText issue) {
    return paginate(
        FramedDraft.all(context, drafts), issue, context.say("sheets.title-strip.sheets"));
  }

  /**
   * Numbers the pages of one packet through, each on its own frame.
   *
   * @param packet what the packet is called
   */
  public static List<PrintedPage> paginate(
      List<FramedDraft> drafts, TitleStripText issue, String packet) {
    List<PrintedPage> pages = new ArrayList<>();
    for (int i = 0; i < drafts.size(); i++) {
      PageDraft draft = drafts.get(i).draft();
      SheetContext context = drafts.get(i).context();
      List<Ink> inks =
          new ArrayList<>(new TitleStrip(context, issue, packet).draw(draft, i + 1, drafts.size()));
      inks.addAll(draft.inks());
      PageFrame page = context.page();
      pages.add(
          new PrintedPage(
              name(draft, i + 1),
              draft.title(),
              draft.area(),
              page.paper(),
              Drawing.paper(page.width(), page.height(), inks)));
    }
    return pages;
  }

  private static String name(PageDraft draft, int number) {
    String name = FileName.slug(draft.title() + " " + draft.area(), "sheet");
    return String.format(Locale.ROOT, "page-%02d-%s", number, name);
  }
}
