package slabwright.inlay.proof;

/** What the shop's shading stands for, as the person says. */
public enum ShadingMeaning {
  /** Shaded vinyl is weeded: the openings. */
  PULLED_OUT,
  /** Shaded vinyl stays: the mask. */
  STAYS,
  UNKNOWN
}
