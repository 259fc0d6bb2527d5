package slabwright.inlay.settingout;

import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.units.Message;

/** A corner of the whole blank, as the graphic is read. */
public enum BlankCorner {
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

  /** Such as "top left corner". */
  public Message word() {
    return switch (this) {
      case TOP_LEFT -> Message.of("inlay.setting-out.top-left");
      case TOP_RIGHT -> Message.of("inlay.setting-out.top-right");
      case BOTTOM_RIGHT -> Message.of("inlay.setting-out.bottom-right");
      case BOTTOM_LEFT -> Message.of("inlay.setting-out.bottom-left");
    };
  }
}
