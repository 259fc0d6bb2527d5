/**
 * Inks that paper and screen share, in the site's, the blank's or paper's frame. No page and no
 * window is known here.
 *
 * <p>Over a plan: {@link AreaInks} (entry: a floor area) with {@link MarkStyles} (how each kind of
 * mark looks), {@link BesideWall}, {@link PrepInks}, {@link TapedRoomInks} and {@link TapeInks}
 * with {@link TapeLines}. Of an inlay: {@link StencilInks} with {@link DyeStyle}, {@link
 * ProofFaultInks}, {@link SettingOutInks}. Small drawings of their own: {@link ReachChart} with
 * {@link ReachCurveLabels}, {@link LaneDiagram} and {@link BatchStyle}, {@link RollDiagram}, {@link
 * DayBarChart}. In words: {@link WaysWords}, {@link PassageWords}, {@link DivisionWords}.
 */
package slabwright.figures;
