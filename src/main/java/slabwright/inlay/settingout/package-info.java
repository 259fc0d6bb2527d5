/**
 * How an inlay finds its place on the floor as a crew does it: from the middle of a doorway square
 * off the wall, two snapped lines, panels to the cross; what lies under the inlay and whether it
 * reads the way people come in. Frame: the site's, millimetres, x right, y up.
 *
 * <p>{@link SettingOut} (entry) on a {@link SettingOutFloor} by {@link SettingOutParameters}. The
 * lines: {@link SnappedLines} by {@link SnappedLinesSearch} from a {@link SettingOutOrigin}, each
 * right angle a {@link SquareCheck} by {@link SquareCheckSearch}, sides by {@link Hand}. The
 * panels: {@link PanelPlace}. The check: {@link TieCheck} of a {@link BlankCorner} by {@link
 * SwingTies}, found by {@link SwingTieSearch} from {@link KnownCorner}s, over free floor by {@link
 * SightLine}. {@link ReadingDirection}, {@link MarkUnderInlay}.
 */
package slabwright.inlay.settingout;
