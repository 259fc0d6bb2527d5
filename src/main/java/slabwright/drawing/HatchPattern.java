package slabwright.drawing;

/** A named way to fill a region with real lines or small marks, told apart without colour. */
public enum HatchPattern {
  /** Nothing drawn. */
  NONE,
  /** Lines rising to the right. */
  RISING,
  /** Lines falling to the right. */
  FALLING,
  /** Both, as a net. */
  NET,
  /** Level lines. */
  LEVEL,
  /** Upright lines. */
  UPRIGHT,
  /** Staggered dots. */
  DOTS,
  /** Staggered small crosses. */
  CROSSES,
  /** Staggered short level dashes. */
  DASHES
}
