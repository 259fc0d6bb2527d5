/**
 * How panels find their place on the floor: tape lengths from known corners, checks, what lies
 * under the inlay and whether it reads the way people come in. Frame: the site's, millimetres, x
 * right, y up.
 *
 * <p>{@link SettingOut} (entry) from {@link SettingOutParameters}; {@link SettingOutPoint}, {@link
 * SettingOutMethod} by {@link SettingOutMethodSearch}, {@link KnownCorner}, {@link DiagonalCheck};
 * {@link ReadingDirection}, {@link MarkUnderInlay}.
 */
package slabwright.inlay.settingout;
