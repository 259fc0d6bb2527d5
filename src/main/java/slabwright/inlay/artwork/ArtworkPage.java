package slabwright.inlay.artwork;

/**
 * The page a graphic is drawn on.
 *
 * @param width of the page as it is drawn here, in pixels
 * @param height as the width
 * @param declaredPerDrawn CSS pixels of the graphic in one pixel as it is drawn here
 * @param hasEdge whether the graphic states a page at all
 */
public record ArtworkPage(double width, double height, double declaredPerDrawn, boolean hasEdge) {}
