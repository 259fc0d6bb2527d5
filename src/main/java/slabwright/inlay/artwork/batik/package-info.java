/**
 * SVG 1.1 through Batik to painted shapes: the one place of Batik in the inlay.
 *
 * <p>{@link SvgArtworkReader} (entry: colour regions) and {@link SvgOutlinesReader} (entry: bare
 * lines). {@link SceneBuilder} builds the scene, with {@link SceneUserAgent}, {@link ClipBridge}
 * and {@link ClipCarrier}, {@link PatternBridge}, and for letters {@link FontResolver}, {@link
 * FontFamily}, {@link HighResolutionFont}, {@link RunningText} and {@link KernedGlyphVector}.
 * {@link SceneVisitor} walks it with {@link SceneState}, {@link TextVisitor}, {@link MarkerNodes},
 * {@link PaintColour} and {@link HardBands}. {@link FineOutline} and {@link SvgArc} keep curves
 * exact until they are flattened once.
 */
package slabwright.inlay.artwork.batik;
