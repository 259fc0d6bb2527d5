package slabwright.inlay.settingout;

/** Left or right of a line as one walks along it. */
public enum Hand {
  LEFT,
  RIGHT
}
