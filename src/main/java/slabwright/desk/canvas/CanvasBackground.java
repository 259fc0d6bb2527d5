package slabwright.desk.canvas;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import slabwright.desk.model.input.Viewport;
import slabwright.shape.Vec;
import slabwright.units.UnitSystem;

/** The table that the plan lies on: a plain colour with faint lines at a round pitch. */
final class CanvasBackground {
  private CanvasBackground() {}

  /** Its plain colour, {@code #rrggbb}. */
  static String colour(Tone tone) {
    return tone == Tone.DARK ? "#1c2123" : "#e9e5de";
  }

  static void paint(
      GraphicsContext g, Viewport v, double w, double h, UnitSystem units, boolean dark) {
    g.setFill(Color.web(colour(dark ? Tone.DARK : Tone.LIGHT)));
    g.fillRect(0, 0, w, h);
    // Filled, not stroked: a stroke of one pixel is smoothed by the software renderer, at a price.
    g.setFill(Color.web(dark ? "#252b2e" : "#dfdad1"));
    double pitch = GridPitch.pitch(v.scale(), 34, units);
    Vec first = v.toSite(0, h);
    for (double x = Math.ceil(first.x() / pitch) * pitch; ; x += pitch) {
      double at = Math.round(v.originX() + x * v.scale());
      if (at > w) {
        break;
      }
      g.fillRect(at, 0, 1, h);
    }
    for (double y = Math.ceil(first.y() / pitch) * pitch; ; y += pitch) {
      double at = Math.round(v.originY() - y * v.scale());
      if (at < 0) {
        break;
      }
      g.fillRect(0, at, w, 1);
    }
  }
}
