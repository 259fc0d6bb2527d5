package slabwright.desk.canvas;

import slabwright.shape.Bounds;

/**
 * What part of the view nothing lies over: the plan is fitted into it.
 *
 * @param width of the view, px
 * @param height of the view, px
 * @param covered how much of its right side lies under something, px
 * @param underfoot how high what lies over its foot is, px
 */
record FreeView(double width, double height, double covered, double underfoot) {
  /** A view lower than this has less room around the plan, px. */
  private static final double LOW = 520;

  static boolean isLow(double height) {
    return height < LOW;
  }

  /** How far down the plan begins at the least in a view so high, px. */
  private static double above(double height) {
    return isLow(height) ? 62 : 84;
  }

  /**
   * What lies free between the ruler and the dimensions above a plan that is fitted into a view so
   * high, px.
   */
  static double underRuler(double height) {
    return above(height) - LiveDimensions.HEIGHT - ScreenScaleBar.foot(isLow(height));
  }

  /** On the screen, px. */
  Bounds box() {
    double below = Math.max(isLow(height) ? 104 : 132, underfoot + LiveDimensions.HEIGHT);
    return new Bounds(
        232, above(height), Math.max(240, width - covered - 96), Math.max(100, height - below));
  }
}
