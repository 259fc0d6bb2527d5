package slabwright.desk.canvas;

import java.util.Optional;
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
            now, (int) Math.ceil(width), (int) Math.ceil(height), CanvasBackground.colour(tone)));
    look.painted().ifPresent(this::keep);
    kept.ifPresent(p -> draw(g, p.window().viewport(), now));
    return kept.isPresent();
  }

  private void keep(ExpectedLook.Painted p) {
    if (kept.isEmpty() || kept.get() != p) {
      kept = Optional.of(p);
      WritableImage next = new WritableImage(p.window().width(), p.window().height());
      next.getPixelWriter()
          .setPixels(
              0,
              0,
              p.window().width(),
              p.window().height(),
              PixelFormat.getIntArgbInstance(),
              p.argb(),
              0,
              p.window().width());
      image = Optional.of(next);
    }
  }

  private void draw(GraphicsContext g, Viewport then, Viewport now) {
    double k = now.scale() / then.scale();
    WritableImage i = image.orElseThrow();
    g.drawImage(
        i,
        now.originX() - then.originX() * k,
        now.originY() - then.originY() * k,
        i.getWidth() * k,
        i.getHeight() * k);
  }
}
