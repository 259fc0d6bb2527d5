package slabwright.drawing;

/**
 * Draws plain inks, in the order they come, in millimetres of paper (y down). A new output, such as
 * a screen, is one more painter.
 */
public interface Painter {
  /** Draws lines; without a round pen, ends are cut square and corners are mitred. */
  void stroke(Stroke stroke);

  /** Draws lines and curves; a painter that has no curves draws chains of points. */
  default void curves(CurveStroke stroke) {
    stroke(stroke.flattened());
  }

  /** Fills what the rings enclose by the even-odd rule. */
  void fill(Fill fill);

  /** Draws words; only what {@link TextMeasure#showable} leaves is shown. */
  void text(Text text);

  /** Draws a picture of pixels over its box. */
  void raster(Raster raster);
}
