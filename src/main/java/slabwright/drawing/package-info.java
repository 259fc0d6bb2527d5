/**
 * Drawings as display lists of inks in millimetres. A {@link Drawing} in a site's or graphic's own
 * frame is set on paper with a {@link View} and painted: as SVG, as PDF, as a picture, or on a
 * screen; {@link Drawing#plain} reduces every ink to strokes, fills and words.
 *
 * <p>{@link Drawing} (entry), {@link Ink} and {@link PrimitiveInk}, then the inks {@link Stroke},
 * {@link CurveStroke}, {@link Fill}, {@link Text}, {@link Raster} (of an {@link EncodedPicture}),
 * {@link Hatch}, {@link Dimension} and {@link Symbol}; {@link HatchParts}, {@link HatchLattice},
 * {@link ScanLines}, {@link DimensionParts}, {@link SymbolParts} and {@link SymbolPen} take them
 * apart. {@link Painter} is what an output implements; {@link View} and {@link CoordinateFrame}
 * lead from model to paper, {@link ScaleBar} tells its scale.
 *
 * <p>How they look: {@link Pen}, {@link Colour}, {@link Palette}, {@link TextStyle}, {@link
 * FillStyle}, {@link HatchPattern}. How wide words are: {@link FontFace}, {@link GlyphAdvances},
 * {@link TextMeasure}, {@link TextWrap}, {@link TextBox}. Cut to a window: {@link Clip}, {@link
 * SegmentClip}; {@link InkIndex} where many windows follow each other.
 */
package slabwright.drawing;
