package slabwright.sheets.plan;

import java.util.List;
import java.util.function.Supplier;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.MissingPages;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.SheetContext;
import slabwright.units.Message;

/**
 * A plan for the wall.
 *
 * @param title of its pages
 * @param area name of the floor area
 * @param pages the plan, in tiles where it is too large for one page
 * @param listed what belongs to it and has no room beside it, to take in the hand
 */
public record Poster(String title, String area, List<PageDraft> pages, List<Block> listed) {
  public Poster {
    pages = List.copyOf(pages);
    listed = List.copyOf(listed);
  }

  /** Posters, or one that says that they are missing. */
  public static List<Poster> or(
      MissingPages missing,
      SheetContext context,
      Message title,
      String area,
      Supplier<List<Poster>> posters) {
    return missing.or(
        title,
        area,
        false,
        posters,
        () ->
            List.of(
                new Poster(
                    context.say(title),
                    area,
                    List.of(MissingPages.missing(context, title, area)),
                    List.of())));
  }
}
