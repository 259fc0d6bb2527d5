/**
 * Painting the slab, and the pointer on it.
 *
 * <p>{@link SlabView} (entry) paints {@link SlabLayers}: {@link CanvasBackground}, {@link
 * UnderlayLayer}, {@link PaleLayer} (the other floor areas), {@link ExpectedLookLayer} and inks by
 * {@link FxPainter} in a {@link Tone}, most of them through {@link InkCache}; {@link SnapInks},
 * {@link CornerLetters} and {@link ScreenScaleBar} above. {@link SlabInput} turns the pointer into
 * touches, a {@link LongPress} into a menu; {@link LiveDimensions} with {@link DimensionField} are
 * sizes typed while drawing. {@link PageView} shows a printed page. {@link PhotoHover} shows the
 * photos of a place.
 */
package slabwright.desk.canvas;
