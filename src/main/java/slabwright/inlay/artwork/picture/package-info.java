/**
 * Pictures in: from pixels to the colour regions that any other graphic gives.
 *
 * <p>{@link PictureArtworkReader} (entry) with {@link TraceSettings}; {@link TracedPicture} (entry:
 * a picture inside a drawing) and {@link PictureOutlinesReader} (entry: a picture of a drawing, as
 * bare lines). {@link BitmapReader} reads the file, {@link PngPixels} writes one, {@link
 * PixelsBuilder} makes upright, solid {@link Pixels} of it.
 *
 * <p>Then, in this order: {@link PaletteFinder} ({@link ColourHistogram}, {@link PixelColour})
 * tells the few colours; {@link PixelLabeller} gives each pixel one, a {@link LabelMap}; {@link
 * ShadeMerging}, {@link SpeckRemoval} and {@link BackgroundFinder} clean it. {@link BoundaryTracer}
 * walks each border once along the grid ({@link BoundaryChain}, {@link PixelEdge}); {@link
 * EdgeSampler} places it within its pixels by their coverage ({@link EdgePoints}); {@link
 * EdgeCornerFinder} parts it, {@link FittedChain} fits an {@link EdgeSpan} between corners ({@link
 * EdgeLine}, {@link BandedSmoother}). {@link PictureTrace} does that for all and sets where three
 * colours meet; {@link LineUntangling} and {@link LineThinning} tidy; {@link RingAssembly} makes
 * outlines of the borders.
 *
 * <p>Lengths here are pixels of the picture, x right, y down from its top left, a pixel's own area
 * being one; only the entry knows millimetres.
 */
package slabwright.inlay.artwork.picture;
