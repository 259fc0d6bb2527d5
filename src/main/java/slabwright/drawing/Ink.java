package slabwright.drawing;

import java.util.List;
import slabwright.shape.Bounds;

/**
 * One item of a drawing's display list. Plain data in millimetres: points lie in the drawing's
 * frame, while widths, symbol sizes and offsets are always millimetres of paper, so that a line is
 * as thick at 1:20 as at 1:100. Turns are degrees, counter-clockwise as seen.
 */
public sealed interface Ink permits PrimitiveInk, Hatch, Dimension, Symbol {
  /** The same ink with its points mapped by the view; sizes on paper stay. */
  Ink placed(View view);

  /** The bounds of this ink's points, in the drawing's frame; line widths and text are left out. */
  Bounds reach();

  /**
   * What a painter draws for this ink, which must already lie in paper millimetres (y down). Only
   * endless patterns heed the window: nothing far outside it is made.
   */
  List<PrimitiveInk> parts(Bounds window);
}
