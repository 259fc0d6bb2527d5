/**
 * SVG text read on no trust and rewritten into plain SVG 1.1. Knows no graphics library.
 *
 * <p>{@link SvgReader} (entry) makes {@link SvgElement}, {@link SvgNode} and {@link SvgText};
 * {@link Svg11Rewriter} (entry) rewrites them: {@link StyleSheet} and {@link CssDeclarations},
 * {@link StyleRewriter}, {@link CssVariables}, {@link CssColourParser}, {@link TransformRewriter},
 * {@link PaintOrderRewriter}. {@link TextStyles} and {@link TextDoubts} settle letters; {@link
 * UnseenPictures}, {@link SvgNames} and {@link SvgNumbers} take out what can't be read; {@link
 * EmbeddedPictures} (entry) makes outlines of pictures. {@link SvgPageReader} finds the page,
 * {@link SvgLayers} takes named groups apart. {@link EmbeddedFont} and {@link WoffReader} take out
 * fonts; {@link UseExpansionValidator} stops a drawing that copies itself without end.
 */
package slabwright.inlay.artwork.css;
