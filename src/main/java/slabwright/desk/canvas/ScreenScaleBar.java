package slabwright.desk.canvas;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import slabwright.desk.model.input.Viewport;
import slabwright.drawing.FontFace;
import slabwright.drawing.Palette;
import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;

/** A ruler of a round length at the top right of the view. */
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
    double length = GridPitch.pitch(v.scale(), 90, units);
    while (length * v.scale() > Math.max(40, width - rim - TOOLS)) {
      length /= 2;
    }
    double w = length * v.scale();
    double y = foot(low) - STROKE;
    double left = width - rim - w;
    Color ink = tone.of(Palette.INK);
    g.setStroke(ink);
    g.setLineDashes();
    g.setLineWidth(3);
    g.strokeLine(left, y, left + w, y);
    g.setLineWidth(1.5);
    for (double t : new double[] {0, 0.5, 1}) {
      g.strokeLine(left + w * t, y - STROKE, left + w * t, y + STROKE);
    }
    g.setFill(ink);
    g.setFont(Font.font(FontFace.FAMILY, 11));
    g.setTextAlign(TextAlignment.CENTER);
    g.fillText("0", left, y - 11);
    g.fillText(LengthFormat.show(length, units), left + w, y - 11);
  }
}
