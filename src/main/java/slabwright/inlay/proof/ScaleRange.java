package slabwright.inlay.proof;

/** From which to which scale a drawing is looked for; 1 is true size. */
record ScaleRange(double least, double most) {
  /** Drawn as it is to be cut, or wrongly so. */
  static final ScaleRange FOR_CUTTING = new ScaleRange(0.1, 10);

  /** Fitted to a page, however small. */
  static final ScaleRange ANY = new ScaleRange(0.002, 10);

  boolean holds(double scale) {
    return scale > least && scale < most;
  }
}
