package slabwright.inlay.settingout;

import slabwright.shape.Vec;
import slabwright.units.Message;

/**
 * How an inlay reads to someone who comes in.
 *
 * @param from the doorway's name
 * @param angle between the way of walking in and the way the graphic's top points, 0 to 180 degrees
 */
public record ReadingDirection(String from, double angle) {
  /**
   * Checks the reading direction.
   *
   * @param door middle of the doorway on the site
   * @param middle of the inlay on the site
   * @param turn of the graphic's top, degrees counter-clockwise from the site's up
   */
  public static ReadingDirection of(String from, Vec door, Vec middle, double turn) {
    double walking = Math.toDegrees(middle.minus(door).angle());
    double off = Math.abs(walking - (turn + 90)) % 360;
    return new ReadingDirection(from, Math.min(off, 360 - off));
  }

  /** Whether it reads upright, within 45°, to who walks in. */
  public boolean upright() {
    return angle <= 45;
  }

  /** One sentence for a card or sheet. */
  public Message said() {
    if (upright()) {
      return Message.of("inlay.reading-direction.upright", from);
    }
    return angle < 135
        ? Message.of("inlay.reading-direction.sideways", from, angle)
        : Message.of("inlay.reading-direction.upside-down", from);
  }
}
