/**
 * The geometry toolbox over JTS, on one grid of 0.001 mm. Only here is anything snapped, and only
 * here is JTS imported.
 *
 * <p>{@link Region} (entry: sets and offsets of areas) and {@link Arrangement} (entry: layers noded
 * once, faces labelled). Then the plain values {@link Vec}, {@link Line}, {@link Ring}, {@link
 * Bounds}, {@link Affine} and {@link Arcs}; curves are fitted in {@code shape.curve}, what lies
 * near is asked in {@code shape.near}. {@link Window} cuts outlines by what they show through.
 *
 * <p>Of an arrangement: {@link Layer}, {@link ActiveLayers}, {@link Border} and {@link
 * BorderSource}; {@link NodingMethod} is the repair ladder. Of a region: {@link PreparedRegion},
 * {@link RingWindow} (what counts inside a box), {@link BoxArea} (and inside several), {@link
 * FillRule}, {@link Offset}. Whether rings are fit for it is told in {@code shape.check}.
 *
 * <p>Inside: {@link GridChain}, {@link NodedRun}, {@link SegmentSplitter}, {@link Noding}, {@link
 * Renoding} (later passes) and {@link NodedSegments}; {@link ArrangementEdges}, {@link HalfEdges},
 * {@link Cycles}, {@link Nesting}, {@link FaceTable}, {@link FaceTraversal}; {@link
 * WindingNumbers}, {@link DissolveOp}, {@link RingFill}, {@link RingSimplifier}, {@link
 * OffsetCurve}, {@link OffsetBays}, {@link Growth}, {@link GrownCells}, {@link Overlay}, {@link
 * SegmentGeometry}; {@link Jts} is the only bridge.
 */
package slabwright.shape;
