package slabwright.sheets;

import java.util.List;
import java.util.Optional;
import slabwright.drawing.Ink;

/**
 * A page before its number among all pages is known.
 *
 * @param numeral the large sign in its corner: the sheet's number, or empty for a handover
 * @param area name of the floor area; empty when the page speaks of the whole site
 * @param scale of its drawing; empty for tables alone
 * @param inks all but header and title block
 */
record Draft(
    String numeral,
    String title,
    String subtitle,
    String area,
    Optional<Scale> scale,
    List<Ink> inks) {
  Draft {
    inks = List.copyOf(inks);
  }

  Draft withInks(List<Ink> v) {
    return new Draft(numeral, title, subtitle, area, scale, v);
  }

  /** The page that goes on from this one, without its drawing. */
  Draft continued(List<Ink> v) {
    String more = title.endsWith("continued") ? title : title + ", continued";
    return new Draft(numeral, more, subtitle, area, Optional.empty(), v);
  }
}
