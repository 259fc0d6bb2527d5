package slabwright.inlay.settingout;

import slabwright.shape.Vec;
import slabwright.units.LetterNumbering;

/** Where all setting out of an inlay starts; the same point on every paper. */
public sealed interface SettingOutOrigin {
  /** Aside by less than can be told on a tape, mm: the middle then lies on the line square in. */
  double ON_LINE = 0.8;

  /** The point itself, on the wall line. */
  Vec at();

  /** Unit vector square off the wall, into the floor. */
  Vec into();

  /** Index of the wall in the outline. */
  int wall();

  /** The letter of the wall as on every sheet. */
  default String wallLetter() {
    return LetterNumbering.of(wall());
  }

  /**
   * The middle of a doorway.
   *
   * @param doorway its name
   * @param halfWidth mm from either jamb
   */
  record DoorMiddle(String doorway, int wall, double halfWidth, Vec at, Vec into)
      implements SettingOutOrigin {}

  /**
   * A point on a wall, where no doorway is near.
   *
   * @param from the corner that is measured from
   * @param distance mm along the wall from that corner
   */
  record WallPoint(int wall, KnownCorner from, double distance, Vec at, Vec into)
      implements SettingOutOrigin {}
}
