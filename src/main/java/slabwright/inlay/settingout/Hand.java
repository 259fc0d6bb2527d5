package slabwright.inlay.settingout;

import slabwright.shape.Vec;

/** Left or right of a line as one walks along it. */
public enum Hand {
  LEFT,
  RIGHT;

  /** On which side a way leads to somebody who looks ahead. */
  static Hand of(Vec way, Vec ahead) {
    return way.cross(ahead) >= 0 ? RIGHT : LEFT;
  }
}
