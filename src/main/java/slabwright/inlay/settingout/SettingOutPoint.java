package slabwright.inlay.settingout;

import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.units.Message;

/**
 * A corner of a panel on the floor.
 *
 * @param panel its name
 * @param corner of the panel, as read
 * @param at on the site
 * @param fix how to find it
 */
public record SettingOutPoint(String panel, Corner corner, Vec at, SettingOutMethod fix) {
  /** A panel's corners as read. */
  public enum Corner {
    TOP_LEFT,
    TOP_RIGHT,
    BOTTOM_RIGHT,
    BOTTOM_LEFT;

    Vec of(Bounds b) {
      return switch (this) {
        case TOP_LEFT -> new Vec(b.minX(), b.minY());
        case TOP_RIGHT -> new Vec(b.maxX(), b.minY());
        case BOTTOM_RIGHT -> new Vec(b.maxX(), b.maxY());
        case BOTTOM_LEFT -> new Vec(b.minX(), b.maxY());
      };
    }
  }

  /** Such as "A top left". */
  public Message name() {
    return switch (corner) {
      case TOP_LEFT -> Message.of("inlay.setting-out.top-left", panel);
      case TOP_RIGHT -> Message.of("inlay.setting-out.top-right", panel);
      case BOTTOM_RIGHT -> Message.of("inlay.setting-out.bottom-right", panel);
      case BOTTOM_LEFT -> Message.of("inlay.setting-out.bottom-left", panel);
    };
  }
}
