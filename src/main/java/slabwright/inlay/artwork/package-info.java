/**
 * Any graphic in, disjoint colour regions in millimetres out (x right, y down, from the top-left of
 * what is painted). Nothing in a file is trusted and nothing is fetched.
 *
 * <p>{@link Artwork} (entry) or an {@link ArtworkRefusal}, both an {@link ArtworkResult}; {@link
 * ColourRegion}, {@link ArtworkOptions}, {@link GraphicFormat}, {@link ArtworkWarning}, and {@link
 * ArtworkQuestion}, found by {@link ArtworkQuestionFinder} and {@link SeeThrough}. {@link
 * DrawnOutlines} (entry) with {@link DrawnOutline} gives bare lines, in an {@link OutlinesResult}.
 *
 * <p>What those who read a format feed: {@link PaintedShape}, {@link SoftMask}, {@link
 * ClipOutlines}, {@link ArtworkPage}, {@link WarningCollector}; then {@link ArtworkBuilder} makes
 * regions by {@link ShapeClipper} (as do {@link PaintedAreas}, for a {@link PaintedPage}, and
 * {@link ClippedOutlines}), {@link BoxClip}, {@link PathFlattener} and {@link ColourMerging}
 * ({@link Rgba}), {@link StrokeOutliner} makes outlines of lines, {@link OutlineBudget} and {@link
 * CrossingBudget} bound them, and {@link PageEdgeCheck} tells what was cut off. {@link
 * RefusedArtworkException} ends a reading.
 */
package slabwright.inlay.artwork;
