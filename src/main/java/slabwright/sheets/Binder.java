package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slabwright.drawing.Drawing;
import slabwright.drawing.Ink;

/** Numbers drafts through and gives each its frame, header and title block. */
final class Binder {
  private Binder() {}

  static List<Page> bind(List<Draft> drafts, SheetContext context, Issue issue) {
    Furniture furniture = new Furniture(context.page(), issue, context.units());
    Paper paper = context.page().paper();
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < drafts.size(); i++) {
      Draft draft = drafts.get(i);
      List<Ink> inks = new ArrayList<>(furniture.on(draft, i + 1, drafts.size()));
      inks.addAll(draft.inks());
      pages.add(
          new Page(
              name(draft, i + 1),
              draft.title(),
              draft.area(),
              paper,
              Drawing.paper(paper.width(), paper.height(), inks)));
    }
    return pages;
  }

  private static String name(Draft draft, int number) {
    String words = draft.title() + " " + draft.area();
    String plain = words.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    return String.format(Locale.ROOT, "page-%02d-%s", number, plain.replaceAll("^-|-$", ""));
  }
}
