package slabwright.inlay.settingout;

import slabwright.shape.Vec;

/**
 * A corner of a panel on the floor.
 *
 * @param name such as "A top left", as read
 * @param at on the site
 * @param fix how to find it
 */
public record SettingOutPoint(String name, Vec at, SettingOutMethod fix) {}
