package slabwright.desk.canvas;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import slabwright.desk.model.input.Viewport;
import slabwright.drawing.Drawing;
import slabwright.drawing.Ink;
import slabwright.drawing.ScaleBar;
import slabwright.drawing.TextStyle;
import slabwright.shape.Vec;
import slabwright.units.UnitSystem;

/** The scale bar of the sheets at the top right of the view. */
final class ScreenScaleBar {
  /** Left of what stands in the corner of the slab. */
  static final double RIM = 196;

  /** The same where the floor as it should look has words in the corner. */
  static final double WIDE_RIM = 316;

  /** Right of the tools. */
  private static final double TOOLS = 190;

  /** From the upper edge, px; closer to it where the plan is. */
  private static final double HIGH = 42;

  private static final double LOW = 22;

  /** Half the height of a stroke across it, px. */
  private static final double STROKE = 5;

  /** Pixels that it may be long. */
  private static final double LONGEST = 220;

  private ScreenScaleBar() {}

  /** How far down it reaches, px. */
  static double foot(boolean low) {
    return (low ? LOW : HIGH) + STROKE;
  }

  /**
   * Draws it.
   *
   * @param low whether there is little room above the plan
   */
  static void paint(
      GraphicsContext g,
      Viewport v,
      double width,
      double rim,
      boolean low,
      UnitSystem units,
      Tone tone) {
    double y = foot(low) - STROKE;
    double most = Math.max(40, Math.min(LONGEST, width - rim - TOOLS)) / FxPainter.SCREEN;
    ScaleBar bar = ScaleBar.within(most, FxPainter.SCREEN / v.scale(), units);
    Vec at = new Vec((width - rim) / FxPainter.SCREEN - bar.length(), y / FxPainter.SCREEN);
    List<Ink> inks = bar.inks(at, TextStyle.plain(2.9), 1.2);
    FxPainter painter = new FxPainter(g, FxPainter.SCREEN, tone);
    Drawing.paper(width / FxPainter.SCREEN, HIGH, inks).plain().forEach(i -> i.paintOn(painter));
  }
}
