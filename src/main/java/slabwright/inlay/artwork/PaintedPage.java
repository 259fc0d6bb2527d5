package slabwright.inlay.artwork;

import java.util.List;
import java.util.Optional;
import slabwright.units.Message;

/**
 * What shows of each color on a page: strokes as their areas, all cut by its clips.
 *
 * @param areas in paint order; empty where whole fills say it all
 * @param unread why strokes and clips were not read; the areas are empty then
 */
public record PaintedPage(List<DrawnOutline> areas, Optional<Message> unread) {
  /** Whole fills say it all. */
  public static final PaintedPage FILLS = new PaintedPage(List.of(), Optional.empty());

  public PaintedPage {
    areas = List.copyOf(areas);
  }
}
