package slabwright.sheets.plan;

import java.util.List;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.PageDraft;

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
}
