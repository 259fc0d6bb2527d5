package slabwright.desk.canvas;

import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import slabwright.desk.model.input.Viewport;
import slabwright.desk.model.scene.ExpectedLook;

/** The floor as it should look, in place of its inks. */
final class ExpectedLookLayer {
  private final ExpectedLook look;
  private Optional<ExpectedLook.Painted> kept = Optional.empty();
  private Optional<WritableImage> image = Optional.empty();

  ExpectedLookLayer(ExpectedLook look) {
    this.look = look;
  }

  /**
   * Paints the last picture where it belongs now, until there is one of this window.
   *
   * @return whether there was one
   */
  boolean paint(GraphicsContext g, Viewport now, double width, double height, Tone tone) {
    if (!look.isOn()) {
      kept = Optional.empty();
      image = Optional.empty();
      return false;
    }
    look.ask(
        new ExpectedLook.Window(
            now,
            (int) Math.ceil(width),
            (int) Math.ceil(height),
            grain(g.getCanvas().getScene()),
            CanvasBackground.colour(tone)));
    look.painted().ifPresent(this::keep);
    kept.ifPresent(p -> draw(g, p.window(), now));
    return kept.isPresent();
  }

  /** Pixels of the screen to one of the window. */
  private static double grain(Scene scene) {
    return scene == null || scene.getWindow() == null ? 1 : scene.getWindow().getOutputScaleX();
  }

  private void keep(ExpectedLook.Painted p) {
    if (kept.isEmpty() || kept.get() != p) {
      kept = Optional.of(p);
      int across = p.window().pixelsAcross();
      int down = p.window().pixelsDown();
      WritableImage next = new WritableImage(across, down);
      next.getPixelWriter()
          .setPixels(0, 0, across, down, PixelFormat.getIntArgbInstance(), p.argb(), 0, across);
      image = Optional.of(next);
    }
  }

  private void draw(GraphicsContext g, ExpectedLook.Window of, Viewport now) {
    Viewport then = of.viewport();
    double k = now.scale() / then.scale();
    WritableImage i = image.orElseThrow();
    g.drawImage(
        i,
        now.originX() - then.originX() * k,
        now.originY() - then.originY() * k,
        i.getWidth() / of.grain() * k,
        i.getHeight() / of.grain() * k);
  }
}
