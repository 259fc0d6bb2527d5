package slabwright.sheets.page;

import java.util.List;
import java.util.Optional;
import slabwright.drawing.Ink;
import slabwright.words.Words;

/**
 * A page before its number among all pages is known.
 *
 * @param area name of the floor area; empty when the page speaks of the whole site
 * @param scale of its drawing; empty for tables alone
 * @param inks all but header and title block
 */
public record PageDraft(
    String title, String subtitle, String area, Optional<Scale> scale, List<Ink> inks) {
  public PageDraft {
    inks = List.copyOf(inks);
  }

  public PageDraft withInks(List<Ink> v) {
    return new PageDraft(title, subtitle, area, scale, v);
  }

  /** The page that goes on from this one, without its drawing. */
  public PageDraft continued(List<Ink> v, Words words) {
    String more = words.say("sheets.page-draft.continued", title);
    return new PageDraft(more, subtitle, area, Optional.empty(), v);
  }
}
